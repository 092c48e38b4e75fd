/** Text as UTF-16BE hex digits, as CMaps and text strings in content streams want it. */
export function utf16Hex(text: string): string {
  let out = '';
  for (let i = 0; i < text.length; i++) out += hex4(text.charCodeAt(i));
  return out;
}

export function hex4(value: number): string {
  return value.toString(16).padStart(4, '0').toUpperCase();
}

/** A ToUnicode CMap (ISO 32000-1, 9.10.3). `texts[i]` is what code `i + 1` says. */
export function toUnicodeMap(texts: readonly string[]): string {
  const rows = texts.map((text, index) => `<${hex4(index + 1)}> <${utf16Hex(text)}>`);
  const blocks: string[] = [];
  // A block may hold a hundred rows.
  for (let at = 0; at < rows.length; at += 100) {
    const part = rows.slice(at, at + 100);
    blocks.push(`${part.length} beginbfchar\n${part.join('\n')}\nendbfchar\n`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <FFFF>
endcodespacerange
${blocks.join('')}endcmap
CMapName currentdict /CMap defineresource pop
end
end
`;
}
