import { useState } from 'react';
import { fact } from '../hooks/installation-facts.ts';
import type { OpenCase } from '../hooks/use-case.ts';
import { type WaterField, waterFact, waterFields } from '../hooks/water-facts.ts';
import { useTexts } from '../words/use-texts.tsx';

/** Settings, depths and sizes of the water side: a number each, and none of them a must. */
export function WaterQuestion({ open }: { open: OpenCase }) {
  return waterFields(open.state?.installation ?? {}).map((field) => (
    <AmountField key={field.id} open={open} field={field} />
  ));
}

function AmountField({ open, field }: { open: OpenCase; field: WaterField }) {
  const texts = useTexts();
  const [typed, setTyped] = useState(field.amount === undefined ? '' : String(field.amount));
  const amount = Number.parseFloat(typed);
  const store = (): void => {
    if (Number.isFinite(amount) && amount > 0 && amount !== field.amount)
      void open.say(fact(waterFact(field.id, amount)));
  };
  return (
    <label className="field">
      <span>
        {texts.say(`water-${field.id}`)}, {texts.name('unit-words', field.unit)}
      </span>
      <input
        inputMode="decimal"
        value={typed}
        autoComplete="off"
        onChange={(event) => setTyped(event.target.value.replace(/[^0-9.]/g, ''))}
        onBlur={store}
        onKeyDown={(event) => event.key === 'Enter' && store()}
      />
    </label>
  );
}
