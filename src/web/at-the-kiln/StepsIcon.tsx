import { path } from "../parts/icons.tsx";

const Steps = path("M3 6l1.6 1.8L7.5 4.5M3 12.5l1.6 1.8 2.9-3.3M3.5 19h3M11 6.5h10M11 12.8h10M11 19h10");

/** A list with ticks. */
export const StepsIcon = () => <Steps size={26} />;
