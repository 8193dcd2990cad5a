import { useState } from 'preact/hooks';
import { z } from 'zod';
import { LARGEST_PHOTO_BYTES, sizeWords } from '../../../../api/contract/body-sizes.js';
import { PHOTO_SHOWS, photosResponse } from '../../../../api/contract/endpoints/photos.js';
import type { Photo, PhotoShows } from '../../../../api/contract/endpoints/photos.js';
import { ask } from '../http/ask.js';
import { dayOf } from '../words/day-of.js';
import { failureWords } from '../words/failure-words.js';
import { FileDrop } from './file-drop.js';
import { useLoaded } from './use-loaded.js';

export const SHOWS_WORDS: Readonly<Record<PhotoShows, string>> = {
  break: 'a break',
  label: 'a label',
  apparatus: 'the apparatus',
  other: 'something else',
};

interface Props {
  /** Of what: "submissions/S-2026-0007", "catalogue/spools/K7M2QX4". */
  readonly of: string;
  readonly first: PhotoShows;
  readonly canAdd: boolean;
  /** Numbers of the specimens that one may be of. */
  readonly specimens?: readonly number[];
  /** Said where there is none. */
  readonly none?: string;
}

const ACCEPT = 'image/jpeg,image/png,image/webp';

/** Pictures with what they show, and where one may, a place to add one. */
export function Photos({ of, first, canAdd, specimens = [], none = '' }: Props) {
  const photos = useLoaded(() => ask(photosResponse, 'GET', `${of}/photos`), [of]);
  const [shows, setShows] = useState<PhotoShows>(first);
  const [specimen, setSpecimen] = useState('');
  const [said, setSaid] = useState('');
  const items = photos.answer?.items ?? [];

  const add = async (files: readonly File[]) => {
    setSaid('Being sent …');
    try {
      for (const file of files) {
        const query = `shows=${shows}${specimen === '' ? '' : `&specimen=${specimen}`}`;
        await ask(photosResponse, 'POST', `${of}/photos?${query}`, { body: file });
      }
      setSaid(
        `${files.length === 1 ? 'The photo is' : `${files.length} photos are`} kept, without place, time and device that the camera wrote.`,
      );
    } catch (error) {
      setSaid(failureWords(error));
    }
    photos.again();
  };
  const remove = (id: string) =>
    void ask(z.null(), 'DELETE', `photos/${id}`).then(
      () => {
        setSaid('The photo is taken away.');
        photos.again();
      },
      (error: unknown) => setSaid(failureWords(error)),
    );
  return (
    <>
      {photos.fault !== '' && <p class="signal">{photos.fault}</p>}
      {photos.answer && items.length === 0 && none !== '' && <p class="soft">{none}</p>}
      {items.length > 0 && (
        <ul class="photos">
          {items.map((photo) => (
            <li key={photo.id}>
              <Picture photo={photo} />
              {photo.isRemovable && canAdd && (
                <button type="button" onClick={() => remove(photo.id)}>
                  Take away<span class="only-heard"> the photo of {toldOf(photo)}</span>
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
      {canAdd && (
        <>
          <div class="acts">
            <label>
              It shows{' '}
              <select value={shows} onChange={(event) => setShows(event.currentTarget.value as PhotoShows)}>
                {PHOTO_SHOWS.map((one) => (
                  <option value={one} key={one}>
                    {SHOWS_WORDS[one]}
                  </option>
                ))}
              </select>
            </label>
            {specimens.length > 0 && (
              <label>
                of specimen{' '}
                <select value={specimen} onChange={(event) => setSpecimen(event.currentTarget.value)}>
                  <option value="">none</option>
                  {specimens.map((number) => (
                    <option key={number}>{number}</option>
                  ))}
                </select>
              </label>
            )}
          </div>
          <FileDrop
            id={`photo-${of}`}
            label={`Drop a photo here, or take or choose one (JPEG, PNG, WebP, to ${sizeWords(LARGEST_PHOTO_BYTES)})`}
            accept={ACCEPT}
            isMany
            onFiles={(files) => void add(files)}
          />
        </>
      )}
      <p role="status">{said}</p>
    </>
  );
}

const toldOf = ({ shows, specimen, addedAt }: Photo): string =>
  `${SHOWS_WORDS[shows]}${specimen === null ? '' : `, specimen ${specimen}`}, ${dayOf(addedAt)}`;

/** A label is shown on a press alone: whoever opens it has read it, and that is written down. */
function Picture({ photo }: { photo: Photo }) {
  const [isOpen, setIsOpen] = useState(photo.shows !== 'label');
  const { id, width, height } = photo;
  return (
    <figure>
      {isOpen ? (
        <a href={`/v1/photos/${id}`} target="_blank" rel="noreferrer">
          <img src={`/v1/photos/${id}`} {...{ width, height }} alt={`Photo of ${toldOf(photo)}`} loading="lazy" />
        </a>
      ) : (
        <button type="button" onClick={() => setIsOpen(true)}>
          Show the label; it is put on record that you read it
        </button>
      )}
      <figcaption class="soft small">{toldOf(photo)}</figcaption>
    </figure>
  );
}
