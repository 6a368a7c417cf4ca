import { wording } from '../language/wording';
import { problem, type Problem } from '../core/problem';
import { fromBase64, toBase64 } from './base64';
import { byteLimit, sizeProblem } from './decodeText';
import { cleanName, type SharedFile } from './sharedFile';

/** Most characters of a link's text: what mail and chat programs leave whole (common practice, no source). */
export const longestShared = 32_000;

/** All that comes out of a stream; undefined once it is more than so many bytes. Rejects where the stream fails. */
async function collected(
  stream: ReadableStream<Uint8Array>,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const reader = stream.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    size += read.value.length;
    if (size > most) {
      await reader.cancel();
      return undefined;
    }
    parts.push(new Uint8Array(read.value));
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

/**
 * Packs a model file into the text of a link: its name, a line feed and its bytes, compressed as zlib data (RFC 1950,
 * whose check sum finds a damaged link), in base64url.
 * @returns the text, or why the file is too long for a link
 */
export async function packShared({ name, bytes }: SharedFile): Promise<string | { readonly problem: Problem }> {
  const stream = new Blob([`${cleanName(name)}\n`, bytes]).stream().pipeThrough(new CompressionStream('deflate'));
  // Three bytes make four characters.
  const packed = await collected(stream, Math.floor(longestShared * 0.75));
  if (packed !== undefined) return toBase64(packed);
  const message = wording`too long for a link: more than ${longestShared} characters. Save a file and send that.`;
  return { problem: problem('link-too-long', message) };
}

const broken = problem(
  'link-damaged',
  wording`damaged link: what it holds is not whole. Copy all of it once more, or ask for the file.`,
);

/** The model file in the text of a link, or why there is none. Never throws. */
export async function unpackShared(text: string): Promise<SharedFile | { readonly problem: Problem }> {
  const packed = fromBase64(text);
  if (packed === undefined) return { problem: broken };
  try {
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate'));
    const whole = await collected(stream, byteLimit);
    if (whole === undefined) return { problem: sizeProblem(byteLimit + 1) ?? broken };
    const end = whole.indexOf(10);
    if (end === -1) return { problem: broken };
    return { name: cleanName(new TextDecoder().decode(whole.subarray(0, end))), bytes: whole.slice(end + 1) };
  } catch {
    return { problem: broken };
  }
}
