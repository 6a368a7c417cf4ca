import { dirname } from 'node:path';
import ts from 'typescript';

const CONFIG = 'tsconfig.engine.json';

/**
 * What the compiler says to texts that would stand in the engine, by the rules of tsconfig.engine.json and among all
 * files that it covers: what one of these brings in (the types of Node, say) is known to all.
 * @param texts by path, "src/core/breach.ts"
 * @returns by path, one message for each fault
 */
export function engineFaults(texts: ReadonlyMap<string, string>): Map<string, string[]> {
  const { config } = ts.readConfigFile(CONFIG, (path) => ts.sys.readFile(path)) as { config: unknown };
  const { options, fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, dirname(CONFIG));
  const paths = [...texts.keys()];
  const host = withTexts(ts.createCompilerHost(options), texts);
  const program = ts.createProgram([...fileNames, ...paths], { ...options, incremental: false }, host);
  return new Map(paths.map((path) => [path, faultsOf(program, path)]));
}

function withTexts(host: ts.CompilerHost, texts: ReadonlyMap<string, string>): ts.CompilerHost {
  return {
    ...host,
    fileExists: (path) => texts.has(path) || host.fileExists(path),
    readFile: (path) => texts.get(path) ?? host.readFile(path),
    getSourceFile(path, options) {
      const text = texts.get(path);
      return text === undefined ? host.getSourceFile(path, options) : ts.createSourceFile(path, text, options);
    },
  };
}

function faultsOf(program: ts.Program, path: string): string[] {
  const file = program.getSourceFile(path);
  return program
    .getSemanticDiagnostics(file)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
}
