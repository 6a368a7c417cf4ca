import { ExactSearch, type SearchRequest } from './exactSearch';

const search = new ExactSearch();

addEventListener('message', ({ data }: MessageEvent<SearchRequest>) => {
  postMessage(search.answer(data));
});
