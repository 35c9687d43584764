import { GLAZE_WARE_RULES } from "../../loading/clearance-rules.ts";
import { formatLength } from "../../measures/length.ts";
import { Button, LengthField } from "../parts/index.ts";
import type { PartProps } from "./editing.ts";
import fields from "./Fields.module.css";
import { withRule } from "./kiln-draft.ts";
import styles from "./Parts.module.css";
import { RulePicture } from "./RulePicture.tsx";
import { RULE_WORDS, type RuleWords } from "./rule-words.ts";

/** The clearances kept in this kiln, what each is for, and the way back to the usual ones. */
export function RulesPart(props: PartProps) {
  const { draft, change } = props;
  return (
    <div className={fields.stack}>
      <p>
        Every load planned for this kiln keeps these. They are the usual ones for glaze ware; a bisque load may stand
        closer, and a load’s own may differ.
      </p>
      <div className={styles.rules}>
        {RULE_WORDS.map((rule) => (
          <RuleField key={rule.rule} {...props} rule={rule} />
        ))}
      </div>
      {Object.keys(draft.rules).length > 0 && (
        <div>
          <Button onPress={() => change((was) => ({ ...was, rules: {} }))}>All back to the usual</Button>
        </div>
      )}
    </div>
  );
}

function RuleField({ draft, units, change, problemAt, rule }: PartProps & { readonly rule: RuleWords }) {
  const usual = GLAZE_WARE_RULES[rule.rule];
  const own = draft.rules[rule.rule];
  return (
    <div className={styles.rule}>
      <RulePicture rule={rule.rule} />
      <div className={styles.ruleWords}>
        <LengthField
          label={rule.label}
          hint={rule.words}
          valueMm={own ?? usual}
          onChange={(mm) => mm !== null && change((was) => withRule(was, rule.rule, mm))}
          problem={problemAt(`rules.${rule.rule}`)}
        />
        {own !== undefined && own !== usual ? (
          <div>
            <Button look="quiet" onPress={() => change((was) => withRule(was, rule.rule, null))}>
              Back to the usual {formatLength(usual, units)}
            </Button>
          </div>
        ) : (
          <span className={styles.usual}>The usual</span>
        )}
      </div>
    </div>
  );
}
