/** Text for an element or attribute: markup escaped, characters that XML 1.0 forbids left out. */
export function escapeXml(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML forbids.
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
      .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
      .replace(/&/g, '&amp;')
      .replace(/</g, '&lt;')
      .replace(/>/g, '&gt;')
      .replace(/"/g, '&quot;')
  );
}

/** A number with at most so many decimals, without an exponent and without -0. */
export function decimal(value: number, digits = 3): string {
  const rounded = Number(value.toFixed(digits));
  return rounded === 0 ? '0' : String(rounded);
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element as text; attributes that are `undefined` are left out. */
export function element(name: string, attributes: Attributes, inside = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? decimal(value) : escapeXml(value ?? '')}"`)
    .join('');
  return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}
