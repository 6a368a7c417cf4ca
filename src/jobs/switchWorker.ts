import { searchSwitches, type SwitchRequest } from './switchSearch';

addEventListener('message', ({ data }: MessageEvent<SwitchRequest>) => {
  postMessage(searchSwitches(data));
});
