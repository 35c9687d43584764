import { useId } from "react";
import parts from "../Learn.module.css";

/** What a firing needs so that it can teach: shown until one has. */
export function WhatTeaches() {
  const id = useId();
  return (
    <section className={parts.part} aria-labelledby={id}>
      <h2 id={id}>What a firing teaches by</h2>
      <ol className={parts.steps}>
        <li>
          <strong>Its load, planned here.</strong> How much stood on which shelf is half of how it fires.
        </li>
        <li>
          <strong>Temperatures.</strong> From a logger, a file of your controller, or typed in every half hour: without
          them nothing can be learned. Write down when the elements went off.
        </li>
        <li>
          <strong>Witness cones on every shelf,</strong> the wanted one, one below, one above. Note how far each bent:
          they tell what the probe cannot, the ware’s own heat.
        </li>
        <li>
          <strong>The electricity meter,</strong> before and after.
        </li>
      </ol>
    </section>
  );
}
