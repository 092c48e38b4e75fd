/** A picture in the parts that a PDF image is made of. */
export interface ImageParts {
  readonly width: number;
  readonly height: number;
  /** Bits a sample: 1, 2, 4, 8 or 16. */
  readonly bits: number;
  readonly space: 'DeviceGray' | 'DeviceRGB' | 'DeviceCMYK' | { readonly indexed: Uint8Array };
  /** Samples row by row, or bytes still packed as `packed` says. */
  readonly data: Uint8Array;
  /** Stream entries (Filter, DecodeParms) when `data` is already packed. */
  readonly packed?: { readonly [key: string]: string | { readonly [key: string]: number } };
  /** True when 0 means full ink, as some programs store four inks. */
  readonly inverted?: boolean;
  /** One byte a pixel, 0 clear to 255 solid. */
  readonly alpha?: Uint8Array;
}
