import { LARGEST_PHOTO_BYTES, sizeWords } from '../contract/body-sizes.js';
import { MOST_PHOTOS } from '../contract/endpoints/photos.js';
import { declareProblems } from '../platform/errors/problem.js';

export const photoProblems = declareProblems({
  'photos/not-a-picture': {
    status: 422,
    title: 'The file is no picture that can be read',
    explains: 'Send a JPEG, PNG or WebP file, whole, of at most 60 million pixels. What it is called does not count, what is in it does.',
  },
  'photos/too-large': {
    status: 413,
    title: 'The picture is too large',
    explains: `A picture may have at most ${sizeWords(LARGEST_PHOTO_BYTES)} (${LARGEST_PHOTO_BYTES} bytes). Take it at a lower resolution, or save it as JPEG.`,
  },
  'photos/too-many': {
    status: 409,
    title: 'There are as many pictures as one thing may have',
    explains: `A submission or a spool has at most ${MOST_PHOTOS} pictures. Take one away that shows nothing new, then add this one.`,
  },
  'photos/decided': {
    status: 409,
    title: 'The submission is decided',
    explains:
      'Pictures are added and taken away until a submission is decided, so that the decision rests on what was there. Tell the reviewer in words; an editor can take one away later.',
  },
});
