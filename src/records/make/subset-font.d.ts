/** The part of `subset-font` that the font script uses; the package is installed only to run it. */
declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: { readonly targetFormat: 'truetype'; readonly preserveNameIds?: readonly number[] },
  ): Promise<Uint8Array>;
}
