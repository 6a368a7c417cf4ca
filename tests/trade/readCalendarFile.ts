/** A small reader of iCalendar files, after RFC 5545 and not after the writer. Works on octets. */

/** A property: name, parameters, value as written. */
interface Property {
  readonly name: string;
  readonly parameters: readonly string[];
  readonly value: string;
}

export interface Component {
  readonly name: string;
  readonly properties: readonly Property[];
  readonly components: readonly Component[];
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** Lines as they stand in the file; each must end in CRLF (3.1). */
export function physicalLines(text: string): Uint8Array[] {
  const octets = new TextEncoder().encode(text);
  const lines: Uint8Array[] = [];
  let start = 0;
  octets.forEach((octet, i) => {
    if (octet === 10 && octets[i - 1] !== 13) throw new Error('a line feed alone');
    if (octet === 13 && octets[i + 1] !== 10) throw new Error('a carriage return alone');
    if (octet !== 10) return;
    lines.push(octets.slice(start, i - 1));
    start = i + 1;
  });
  if (start !== octets.length) throw new Error('the last line does not end');
  return lines;
}

/** Content lines: a line that begins with a space or tab goes on where the one before ended (3.1). */
export function contentLines(text: string): string[] {
  const joined: number[][] = [];
  for (const line of physicalLines(text)) {
    // Some readers decode line by line, so no character may be split.
    utf8.decode(line);
    if (line[0] === 32 || line[0] === 9) joined.at(-1)?.push(...line.slice(1));
    else joined.push([...line]);
  }
  return joined.map((line) => utf8.decode(new Uint8Array(line)));
}

function property(line: string): Property {
  const colon = line.indexOf(':');
  const [name = '', ...parameters] = line.slice(0, colon).split(';');
  if (colon < 0 || !/^[A-Z-]+$/.test(name)) throw new Error(`not a property: ${line}`);
  return { name, parameters, value: line.slice(colon + 1) };
}

/** The text that a value stands for (3.3.11). */
export function textOf(value: string): string {
  if (/(?<!\\)(?:\\\\)*[;,]/.test(value)) throw new Error(`a bare comma or semicolon: ${value}`);
  return value.replace(/\\(.)/gs, (_, mark: string) => {
    if (!'\\;,nN'.includes(mark)) throw new Error(`no such escape: ${mark}`);
    return mark.toLowerCase() === 'n' ? '\n' : mark;
  });
}

/** A whole file: one component with those in it. */
export function readCalendarFile(text: string): Component {
  const open: { name: string; properties: Property[]; components: Component[] }[] = [];
  const root = { name: '', properties: [] as Property[], components: [] as Component[] };
  open.push(root);
  for (const line of contentLines(text)) {
    const { name, parameters, value } = property(line);
    const inner = open.at(-1) ?? root;
    if (name === 'BEGIN') open.push({ name: value, properties: [], components: [] });
    else if (name === 'END') {
      open.pop();
      if (inner.name !== value) throw new Error(`${inner.name} ends as ${value}`);
      open.at(-1)?.components.push(inner);
    } else inner.properties.push({ name, parameters, value });
  }
  const [only, ...more] = root.components;
  if (open.length !== 1 || more.length > 0 || root.properties.length > 0 || !only) throw new Error('not one component');
  return only;
}
