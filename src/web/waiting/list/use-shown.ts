import { useDeferredValue, useEffect, useMemo, useState } from "react";
import { keepOnDevice, keptOnDevice } from "../kept-on-device.ts";
import { NOTHING_CHOSEN, type Selection, stillThere } from "./selection.ts";
import type { WaitingBatch } from "./waiting-batch.ts";
import { facetValues, filterWare, NO_FILTER, type WareFilter } from "./ware-filter.ts";
import { orderWare, WARE_ORDERS, type WareOrder } from "./ware-order.ts";

/** As she left it on another screen; a reload begins anew. */
let left: { readonly filter: WareFilter; readonly selection: Selection } = {
  filter: NO_FILTER,
  selection: NOTHING_CHOSEN,
};
const ORDER_UNDER = "waiting-order";

/** Which batches show, in what order, and which are chosen. */
export function useShown(batches: readonly WaitingBatch[]) {
  const [filter, setFilter] = useState(left.filter);
  const [selection, setSelection] = useState(left.selection);
  const [order, setOrder] = useState<WareOrder>(
    () => WARE_ORDERS.find((each) => each === keptOnDevice(ORDER_UNDER)) ?? "due",
  );
  useEffect(() => keepOnDevice(ORDER_UNDER, order), [order]);
  useEffect(() => {
    left = { filter, selection };
  }, [filter, selection]);
  useEffect(() => {
    const there = new Set(batches.map(({ record }) => record.id));
    setSelection((before) => stillThere(before, there));
  }, [batches]);
  // Letters typed show at once; a list of thousands may follow a moment later.
  const settled = useDeferredValue(filter);
  const ordered = useMemo(() => orderWare(batches, order), [batches, order]);
  const shown = useMemo(() => filterWare(ordered, settled), [ordered, settled]);
  const values = useMemo(() => facetValues(batches, settled), [batches, settled]);
  return { filter, setFilter, order, setOrder, selection, setSelection, shown, values };
}
