// What the server says to the browser about notices. Every path is under /api.
//
//   GET  /events         a StudioEvent may carry a `notice`: show it, also as the browser's own notification
//   GET  /mail           MailCard; POST /mail MailSetting → MailCard; DELETE /mail
//   POST /notices/try    → NoticeTrial: a notice by each way that is set, to see whether it arrives
//   Where they go otherwise is in the studio's settings (`notices`), by the command change-settings.

/** One thing to be told to her: a fault, or a moment to look. */
export interface StudioNotice {
  readonly id: string;
  readonly firingId: string;
  readonly firingName: string;
  readonly kind: string;
  readonly since: string;
  /** Null as long as it lasts. */
  readonly until: string | null;
  readonly message: string;
  /** True where the kiln may be hotter than it should be. */
  readonly isDanger: boolean;
}

/** The mail server that notices are sent by, without its password. */
export interface MailCard {
  readonly host: string;
  readonly port: number;
  readonly user: string;
  readonly from: string;
  readonly hasPassword: boolean;
}

export interface MailSetting {
  readonly host: string;
  readonly port: number;
  /** Empty where the server asks for none. */
  readonly user: string;
  /** Kept as it is where left out. */
  readonly password?: string;
  /** The address they come from. */
  readonly from: string;
}

/** By each way: "sent", "not set", or in a sentence why not. */
export interface NoticeTrial {
  readonly email: string;
  readonly webhook: string;
}
