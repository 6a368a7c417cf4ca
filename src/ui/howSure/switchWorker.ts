import { searchSwitches, type SwitchAsk } from './switchSearch';

addEventListener('message', ({ data }: MessageEvent<SwitchAsk>) => {
  postMessage(searchSwitches(data));
});
