import { searchSwitches, type SwitchAsk } from './switchSearch';

addEventListener('message', ({ data }: MessageEvent<SwitchAsk>) => {
  for (const reply of searchSwitches(data)) postMessage(reply);
});
