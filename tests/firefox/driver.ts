/** What the walk needs of a page, as puppeteer-core gives it. */
export interface DrivenPage {
  on(
    event: 'pageerror' | 'console',
    listen: (told: { message?: string; type?: () => string; text?: () => string }) => void,
  ): void;
  goto(address: string): Promise<unknown>;
  reload(): Promise<unknown>;
  evaluate<T>(script: string): Promise<T>;
  setViewport(size: { width: number; height: number }): Promise<void>;
  waitForSelector(
    selector: string,
    options?: { timeout?: number },
  ): Promise<{ uploadFile?: (path: string) => Promise<void> } | null>;
  click(selector: string): Promise<void>;
  type(selector: string, text: string): Promise<void>;
  keyboard: { press(key: string): Promise<void>; down(key: string): Promise<void>; up(key: string): Promise<void> };
  waitForFileChooser(): Promise<{ accept(paths: string[]): Promise<void> }>;
}

/** A browser that puppeteer-core drives. */
export interface DrivenBrowser {
  version(): Promise<string>;
  newPage(): Promise<DrivenPage>;
  close(): Promise<void>;
}

interface Library {
  readonly default: {
    launch(options: { browser: 'firefox'; executablePath: string; headless: boolean }): Promise<DrivenBrowser>;
  };
}

/**
 * Starts a Firefox through WebDriver BiDi.
 * @param library the folder of puppeteer-core, or its name where it is installed
 * @returns undefined where it is not there
 */
export async function startFirefox(library: string, executablePath: string): Promise<DrivenBrowser | undefined> {
  const found = await import(library).then(
    (module: unknown) => module as Library,
    () => undefined,
  );
  return found?.default.launch({ browser: 'firefox', executablePath, headless: true });
}
