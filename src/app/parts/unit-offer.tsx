import { Key } from './key.tsx';

interface UnitOfferProps {
  /** What is odd about the number, in words. */
  readonly children: string;
  /** The other unit: "4.7 Ω". */
  readonly other: string;
  /** As typed: "4.7 kΩ". */
  readonly asTyped: string;
  onOther(): void;
  onAsTyped(): void;
}

/** Asked when a number is some thousand times off its window: the unit is offered, never changed unasked. */
export function UnitOffer({ children, other, asTyped, onOther, onAsTyped }: UnitOfferProps) {
  return (
    <section className="offer" aria-live="assertive">
      <p>{children}</p>
      <div className="offer-keys">
        <Key onPress={onAsTyped}>{asTyped}</Key>
        <Key main onPress={onOther}>
          {other}
        </Key>
      </div>
    </section>
  );
}
