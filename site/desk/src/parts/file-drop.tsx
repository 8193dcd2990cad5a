interface Props {
  readonly id: string;
  readonly label: string;
  readonly accept: string;
  readonly isMany?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** A place to drop files on, which is a plain choice of files as well. */
export function FileDrop({ id, label, accept, isMany = false, onFiles }: Props) {
  return (
    <div
      class="drop"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        onFiles([...(event.dataTransfer?.files ?? [])].slice(0, isMany ? 50 : 1));
      }}
    >
      <label for={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        multiple={isMany}
        onChange={(event) => {
          onFiles([...(event.currentTarget.files ?? [])]);
          // The same file can be chosen again, corrected.
          event.currentTarget.value = '';
        }}
      />
    </div>
  );
}
