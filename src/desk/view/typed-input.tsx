import { useState } from 'preact/hooks';

interface TypedProps {
  /** What else the line is: its name, its keyboard, what describes it. */
  readonly attributes: Readonly<Record<string, string | boolean>>;
  /** What stands in the file. */
  readonly text: string;
  readonly onType: (text: string) => void;
  /** The coach is done with it. */
  readonly onDone: (text: string) => void;
}

/** A line to type in, with a file behind it that follows a little later: what is under the pen is what was typed. */
export function TypedInput({ attributes, text, onType, onDone }: TypedProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <input
      {...attributes}
      value={typed ?? text}
      onInput={(event) => {
        setTyped(event.currentTarget.value);
        onType(event.currentTarget.value);
      }}
      onChange={(event) => onDone(event.currentTarget.value)}
      onBlur={() => setTyped(null)}
    />
  );
}
