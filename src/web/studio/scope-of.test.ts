import { expect, test } from "vitest";
import { ALL_COMMANDS } from "../../studio/commands/all-commands.ts";
import { scopeOf } from "./scope-of.ts";

test.each([...ALL_COMMANDS.values()].map((command) => [command.name, command] as const))(
  "%s belongs, before the studio has answered, to what the studio will say",
  (name, command) => {
    const input = { id: "l1" };
    expect(scopeOf(name, input)).toBe(command.scope(input));
  },
);
