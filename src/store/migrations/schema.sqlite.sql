-- 0001-studio
create table "kilns" ("id" text not null,
  "kiln" text not null,
  "furniture" text not null,
  "rules" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "kilnsId" primary key ("id")) strict;
create table "clayBodies" ("id" text not null,
  "name" text not null,
  "cones" text,
  "note" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "clayBodiesId" primary key ("id")) strict;
create table "glazes" ("id" text not null,
  "name" text not null,
  "cones" text,
  "runs" integer not null,
  "note" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "glazesId" primary key ("id")) strict;
create table "ware" ("id" text not null,
  "ware" text not null,
  "stage" text not null,
  "firingKind" text,
  "dueOn" text,
  "ownerNote" text not null,
  "clayBodyId" text,
  "glazeId" text,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "wareClayBody" foreign key ("clayBodyId") references "clayBodies" ("id"),
  constraint "wareGlaze" foreign key ("glazeId") references "glazes" ("id"),
  constraint "wareId" primary key ("id")) strict;
create table "loads" ("id" text not null,
  "kilnId" text not null,
  "name" text not null,
  "state" text not null,
  "request" text not null,
  "plan" text,
  "pins" text not null,
  "ticks" text not null,
  "sources" text not null,
  "version" integer not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "loadKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "loadsId" primary key ("id")) strict;
create table "firings" ("id" text not null,
  "kilnId" text not null,
  "loadId" text,
  "name" text not null,
  "state" text not null,
  "programme" text,
  "startedAt" text,
  "endedAt" text,
  "meterReadings" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "firingKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "firingLoad" foreign key ("loadId") references "loads" ("id"),
  constraint "firingsId" primary key ("id")) strict;
create table "notes" ("id" text not null,
  "aboutKind" text,
  "aboutId" text,
  "text" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "notesId" primary key ("id")) strict;
create table "photos" ("id" text not null,
  "aboutKind" text,
  "aboutId" text,
  "mediaType" text not null,
  "byteLength" integer not null,
  "caption" text not null,
  "takenAt" text,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "photosId" primary key ("id")) strict;
create table "pictures" ("photoId" text not null,
  "bytes" blob not null,
  constraint "picturePhotoId" primary key ("photoId"),
  constraint "picturePhoto" foreign key ("photoId") references "photos" ("id") on delete cascade) strict;
create table "readings" ("firingId" text not null,
  "probe" text not null,
  "at" text not null,
  "tempC" real not null,
  constraint "readingMoment" primary key ("firingId", "probe", "at"),
  constraint "readingFiring" foreign key ("firingId") references "firings" ("id") on delete cascade) strict;
create index "wareByStage" on "ware" ("stage");
create index "wareByClayBody" on "ware" ("clayBodyId");
create index "wareByGlaze" on "ware" ("glazeId");
create index "loadsByKiln" on "loads" ("kilnId");
create index "firingsByKiln" on "firings" ("kilnId");
create index "firingsByLoad" on "firings" ("loadId");
create index "notesByAbout" on "notes" ("aboutKind", "aboutId");
create index "photosByAbout" on "photos" ("aboutKind", "aboutId");

-- 0002-history-and-settings
alter table "loads" add column "alternativeOf" text;
alter table "loads" add column "takenBack" text;
create table "settings" ("id" text not null,
  "settings" text not null,
  constraint "settingsId" primary key ("id")) strict;
create table "history" ("id" text not null,
  "place" integer not null,
  "at" text not null,
  "scope" text not null,
  "command" text not null,
  "summary" text not null,
  "standing" text not null,
  "changes" text not null,
  "settings" text,
  constraint "historyId" primary key ("id")) strict;
create table "historyPictures" ("entryId" text not null,
  "photoId" text not null,
  "bytes" blob not null,
  constraint "historyPicture" primary key ("entryId", "photoId"),
  constraint "historyPictureEntry" foreign key ("entryId") references "history" ("id") on delete cascade) strict;
create unique index "historyByPlace" on "history" ("place");
create index "historyByScope" on "history" ("scope", "place");

-- 0003-around-the-firing
alter table "firings" add column "plannedStartAt" text;
alter table "firings" add column "shutOffAt" text;
alter table "firings" add column "foretold" text;
alter table "firings" add column "checklist" text;
alter table "firings" add column "cones" text;
alter table "firings" add column "outcomes" text;
alter table "firings" add column "notices" text;
create table "programmes" ("id" text not null,
  "programme" text not null,
  "note" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "programmesId" primary key ("id")) strict;
create table "calibrations" ("id" text not null,
  "kilnId" text not null,
  "at" text not null,
  "firingIds" text not null,
  "calibration" text not null,
  "learned" text,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "calibrationKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "calibrationsId" primary key ("id")) strict;
create table "upkeep" ("id" text not null,
  "kilnId" text not null,
  "at" text not null,
  "what" text not null,
  "ohms" text,
  "count" integer,
  "note" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "upkeepKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "upkeepId" primary key ("id")) strict;
create table "loggers" ("id" text not null,
  "kilnId" text not null,
  "probe" text not null,
  "name" text not null,
  "tokenHash" text not null,
  "createdAt" text not null,
  "changedAt" text not null,
  constraint "loggerKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "loggersId" primary key ("id")) strict;
create table "historyReadings" ("entryId" text not null,
  "firingId" text not null,
  "probe" text not null,
  "readings" text not null,
  constraint "historyReadingsOf" primary key ("entryId", "firingId", "probe"),
  constraint "historyReadingsEntry" foreign key ("entryId") references "history" ("id") on delete cascade) strict;
create index "calibrationsByKiln" on "calibrations" ("kilnId", "at");
create index "upkeepByKiln" on "upkeep" ("kilnId", "at");
create index "loggersByKiln" on "loggers" ("kilnId");

-- 0004-roll-ups
create table "readingRollUps" ("firingId" text not null,
  "period" text not null,
  "probe" text not null,
  "at" text not null,
  "count" integer not null,
  "leastC" real not null,
  "mostC" real not null,
  "sumC" real not null,
  "firstAt" text not null,
  "firstC" real not null,
  "lastAt" text not null,
  "lastC" real not null,
  constraint "readingRollUp" primary key ("firingId", "period", "probe", "at"),
  constraint "rollUpFiring" foreign key ("firingId") references "firings" ("id") on delete cascade) strict;

-- 0005-judgements-taken-back
alter table "firings" add column "takenBack" text;
