/** A full stop or question mark, with what closes around it, before a blank or the end; also 。？！ and ؟. */
const END = /[.?!؟]+[”"’)]*(?=\s|$)|[。？！]+[”"’）]*/gu;

/** Sentences of a text in order, each with its place in the text, without the blanks between them. */
export function sentencesOf(text: string): { readonly text: string; readonly at: number }[] {
  const found: { text: string; at: number }[] = [];
  let from = 0;
  const take = (to: number) => {
    const piece = text.slice(from, to);
    const words = piece.trim();
    if (words !== '') found.push({ text: words, at: from + piece.length - piece.trimStart().length });
    from = to;
  };
  for (const m of text.matchAll(END)) take(m.index + m[0].length);
  take(text.length);
  return found;
}

/** Words between blanks. A number, a time and a hyphenated word are one word each. */
export function wordCount(text: string): number {
  return text.split(/\s+/).filter((w) => /[\p{L}\p{N}]/u.test(w)).length;
}
