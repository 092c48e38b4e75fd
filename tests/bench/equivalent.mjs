/**
 * A sheet as a web page that a browser prints to the same effect: the same words, fonts, sizes, paper
 * and running lines. Only kinds of blocks that both can print are allowed; any other one throws, so
 * that the two never drift apart in silence.
 */
export function equivalentHtml(sheet, assets) {
  const { stamp, strip, cautions } = sheet;
  const boxes = cautions.lines.map(
    (line) =>
      `<section class="caution"><h2>${escaped(line.word)}</h2><p>${inlines(line.inlines)}</p></section>`,
  );
  const sources = sheet.sources.map((line) => `<li value="${line.number}">${escaped(line.words)}</li>`);
  return `<!doctype html>
<html lang="${sheet.language}" dir="${sheet.direction}">
<head>
<meta charset="utf-8">
<title>${escaped(sheet.title)}</title>
<style>${css(assets, stamp)}</style>
</head>
<body>
<header><p class="strip"><span>${escaped(strip.start)}</span><span>${escaped(strip.end)}</span></p>
<h1>${escaped(sheet.title)}</h1>
<div class="band"><img src="${assets}pictures/${sheet.emblem}.svg" alt=""><p>${inlines(sheet.message)}</p></div></header>
${boxes.join('\n')}
${cautions.standing ? `<p class="standing">${inlines(cautions.standing.inlines)}</p>` : ''}
${sections(sheet.blocks)}
${sources.length > 0 ? `<section><h2>${escaped(sheet.words.sources)}</h2><ol class="sources">${sources.join('')}</ol></section>` : ''}
${sheet.interpreter ? `<p class="strip">${sheet.interpreter.parts.map((part) => `<span lang="${part.language}">${escaped(part.text)}</span>`).join(' ')}</p>` : ''}
</body>
</html>
`;
}

/** Each head stands in the rail, what follows it in the column. */
function sections(list) {
  const parts = [];
  for (const block of list) {
    if (block.kind === 'heading' && block.level === 2) parts.push({ head: block, body: [] });
    else if (parts.length > 0) parts.at(-1).body.push(block);
    else parts.push({ head: undefined, body: [block] });
  }
  return parts
    .map(({ head, body }) => {
      const rail = head ? `<h2>${inlines(head.inlines)}</h2>` : '<span></span>';
      return `<section>${rail}<div>${body.map(html).join('\n')}</div></section>`;
    })
    .join('\n');
}

function html(block) {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${inlines(block.inlines)}</h${block.level}>`;
    case 'paragraph':
      return `<p>${inlines(block.inlines)}</p>`;
    case 'list': {
      const tag = block.ordered ? 'ol' : 'ul';
      return `<${tag}>${block.items.map((item) => `<li>${item.map(html).join('')}</li>`).join('')}</${tag}>`;
    }
    case 'quote':
      return `<blockquote>${block.blocks.map(html).join('')}</blockquote>`;
    case 'table': {
      const caption = block.caption ? `<caption>${escaped(block.caption)}</caption>` : '';
      const head = block.head.map((cell) => `<th scope="col">${inlines(cell.inlines)}</th>`).join('');
      const rows = block.rows.map(
        (row) => `<tr>${row.map((cell, index) => cellHtml(block, cell, index)).join('')}</tr>`,
      );
      return `<table>${caption}<thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
    }
    default:
      throw new Error(`The bench's handout holds a ${block.kind}, which a web page would show otherwise.`);
  }
}

function cellHtml(table, cell, index) {
  const words = inlines(cell.inlines);
  return table.rowHeads && index === 0 ? `<th scope="row">${words}</th>` : `<td>${words}</td>`;
}

function inlines(list) {
  return list
    .map((inline) => {
      let text = escaped(inline.text);
      if (inline.code) text = `<code>${text}</code>`;
      if (inline.struck) text = `<s>${text}</s>`;
      if (inline.emphasis) text = `<em>${text}</em>`;
      if (inline.strong) text = `<strong>${text}</strong>`;
      if (inline.cite) text = `<sup>${text}</sup>`;
      if (inline.href) text = `<a href="${escaped(inline.href)}">${text}</a>`;
      return inline.breakBefore ? `<br>${text}` : text;
    })
    .join('');
}

function escaped(text) {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

function css(assets, stamp) {
  const faces = [400, 500, 600, 700, 800].map(
    (weight) =>
      `@font-face { font-family: Sheet; font-weight: ${weight}; src: url("${assets}fonts/atkinson-hyperlegible-next-${weight}.ttf"); }`,
  );
  const page = stamp.page
    .split(/\{(page|pages)\}/)
    .map((part, index) => (index % 2 === 1 ? `counter(${part})` : quoted(part)));
  return `
${faces.join('\n')}
@page { size: Letter; margin: 11mm 16mm 19mm; font: 9pt/12.4pt Sheet;
  @bottom-left { content: ${quoted(stamp.version)}; font: 700 9pt/12.4pt Sheet; }
  @bottom-center { content: ${quoted(`${stamp.review} ${stamp.dataDate}`.trim())}; font: 9pt/12.4pt Sheet; }
  @bottom-right { content: ${page.join(' ')}; font: 9pt/12.4pt Sheet; } }
* { margin: 0; padding: 0; box-sizing: border-box; }
body { font: 12.5pt/17pt Sheet; color: #14212b; orphans: 2; widows: 2; }
header { border-top: 0.8mm solid #1f4e5f; padding-top: 1.6mm; }
.strip { display: flex; justify-content: space-between; gap: 6mm; font-size: 10.5pt; line-height: 14pt; }
h1 { font: 800 28.5pt/32pt Sheet; margin: 3.4mm 0 3.6mm 42mm; }
.band { background: #e4eef1; border-top: 2.25pt solid #1f4e5f; padding: 4mm 0 4.6mm; display: flex; align-items: center; }
.band img { width: 24mm; margin: 0 9mm; flex: none; }
.band p { font: 600 16.5pt/21.5pt Sheet; }
section { display: grid; grid-template-columns: 36mm 1fr; column-gap: 6mm; margin-top: 5mm; break-inside: auto; }
h2 { font: 800 14pt/17pt Sheet; break-after: avoid; }
h3, h4 { font: 800 12.5pt/17pt Sheet; margin-top: 3mm; break-after: avoid; }
.caution { border: 1pt solid #14212b; border-left-width: 3.2mm; padding: 2.2mm; break-inside: avoid; }
.standing { margin-top: 2.2mm; line-height: 16.2pt; }
p + *, ul + *, ol + *, table + *, blockquote + * { margin-top: 1.5mm; }
ul, ol { padding-left: 5mm; }
li + li { margin-top: 1mm; }
blockquote { border-left: 1.5pt solid #7b8a93; padding-left: 3mm; }
table { border-collapse: collapse; width: 100%; font-size: 11pt; line-height: 14.5pt; }
th { font-weight: 700; text-align: start; }
th, td { padding: 1.5mm 2mm 1.5mm 0; border-bottom: 0.75pt solid #7b8a93; vertical-align: top; }
tr { break-inside: avoid; }
thead { display: table-header-group; }
.sources { font-size: 9.5pt; line-height: 13pt; }
`;
}

function quoted(text) {
  return `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`;
}
