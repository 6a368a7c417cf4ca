/**
 * All that the engine takes from the platform beyond the language itself: bytes to text and back, and compression.
 * Browsers, workers and Node have these (WHATWG Encoding, Compression and Streams; W3C File API). Only
 * tsconfig.engine.json reads this file: everywhere else the platform's own types are known.
 */
declare class TextDecoder {
  constructor(label?: string, options?: { fatal?: boolean; ignoreBOM?: boolean });
  decode(bytes?: Uint8Array, options?: { stream?: boolean }): string;
}

declare class ReadableStream<Part> {
  getReader(): {
    read(): Promise<{ done: false; value: Part } | { done: true; value: Part | undefined }>;
    cancel(): Promise<void>;
  };
  pipeThrough<Through>(pair: { readonly readable: ReadableStream<Through> }): ReadableStream<Through>;
}

declare class Blob {
  constructor(parts: readonly (string | Uint8Array<ArrayBuffer>)[]);
  /** In bytes; texts count as UTF-8. */
  readonly size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
  stream(): ReadableStream<Uint8Array<ArrayBuffer>>;
}

declare class CompressionStream {
  constructor(format: 'deflate');
  readonly readable: ReadableStream<Uint8Array<ArrayBuffer>>;
}

declare class DecompressionStream {
  constructor(format: 'deflate');
  readonly readable: ReadableStream<Uint8Array<ArrayBuffer>>;
}

/** Base64 (RFC 4648) of a text whose characters are bytes. */
declare function btoa(characters: string): string;

/** @throws where the text is not base64 */
declare function atob(text: string): string;
