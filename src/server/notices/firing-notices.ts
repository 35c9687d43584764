import type { StudioNotice } from "../../studio/api/notices-contract.ts";
import type { FiringNotice } from "../../studio/records/firing-parts.ts";
import type { FiringRecord } from "../../studio/records/firing-record.ts";
import type { Studio } from "../studio.ts";
import type { NoticeSender } from "./notice-sender.ts";
import { isDanger, isSame, type Lasting, type QuietRules, withoutFlicker } from "./quiet-rules.ts";

/** A fault, or a moment to look, as the watch of a firing knows it. */
export interface Noticed extends Lasting {
  readonly message: string;
}

/**
 * The notices of one firing: each fault written down once with it, its end too, and sent by the quiet rules. Told the same
 * again, after a restart for instance, it does nothing.
 */
export class FiringNotices {
  readonly #studio: Studio;
  readonly #firing: Pick<FiringRecord, "id" | "name">;
  readonly #rules: QuietRules;
  readonly #sender: Pick<NoticeSender, "send">;
  #known: readonly FiringNotice[];

  constructor(
    studio: Studio,
    firing: Pick<FiringRecord, "id" | "name" | "notices">,
    rules: QuietRules,
    sender: Pick<NoticeSender, "send">,
  ) {
    this.#studio = studio;
    this.#firing = firing;
    this.#rules = rules;
    this.#sender = sender;
    this.#known = firing.notices ?? [];
  }

  /** All that was noticed so far, over or not: writes down and sends what is new of it. */
  async tell(noticed: readonly Noticed[]): Promise<void> {
    const changed: FiringNotice[] = [];
    for (const each of withoutFlicker(noticed)) {
      const known = this.#known.find((notice) => isSame(notice, each));
      if (known === undefined) changed.push({ id: this.#studio.newId(), ...each });
      else if (known.until !== each.until) changed.push({ ...known, until: each.until });
    }
    const isKnown = new Set(this.#known.map(({ id }) => id));
    if (changed.length > 0) {
      const input = { id: this.#firing.id, notices: changed };
      await this.#studio.command("note-notices", { key: this.#studio.newId(), input });
      const byId = new Map([...this.#known, ...changed].map((notice) => [notice.id, notice]));
      this.#known = [...byId.values()];
    }
    const now = Date.parse(this.#studio.now());
    for (const notice of changed) {
      if (notice.until !== null) this.#rules.ended(notice.id);
      else if (!isKnown.has(notice.id)) this.#send(this.#rules.begun(this.#shown(notice), now));
    }
    this.#send(this.#rules.due(now));
  }

  #send(notices: readonly StudioNotice[]): void {
    for (const notice of notices) this.#sender.send(notice);
  }

  #shown(notice: FiringNotice): StudioNotice {
    const { id, name } = this.#firing;
    return { ...notice, firingId: id, firingName: name, isDanger: isDanger(notice.kind) };
  }
}
