import { speak } from '../language/language';
import type { ToWorker, WorkerLanguage } from './protocol';

const waiting: ToWorker[] = [];
let hear = (message: ToWorker): void => {
  waiting.push(message);
};

/** Starts the work once texts can be made, as many are made where their file is loaded. */
async function start({ texts }: WorkerLanguage): Promise<void> {
  if (texts !== undefined) {
    const { languageOf } = await import('../language/catalogue');
    speak(languageOf(texts.tag, texts.catalogue));
  }
  hear = (await import('./workerServer')).openWorkerServer();
  waiting.forEach(hear);
}

addEventListener('message', ({ data }: MessageEvent<ToWorker | WorkerLanguage>) => {
  if (data.kind === 'language') void start(data);
  else hear(data);
});
