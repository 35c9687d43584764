-- 0001-studio
create table "kilns" ("id" text collate "C" not null,
  "kiln" text collate "C" not null,
  "furniture" text collate "C" not null,
  "rules" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "kilnsId" primary key ("id"));
create table "clayBodies" ("id" text collate "C" not null,
  "name" text collate "C" not null,
  "cones" text collate "C",
  "note" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "clayBodiesId" primary key ("id"));
create table "glazes" ("id" text collate "C" not null,
  "name" text collate "C" not null,
  "cones" text collate "C",
  "runs" integer not null,
  "note" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "glazesId" primary key ("id"));
create table "ware" ("id" text collate "C" not null,
  "ware" text collate "C" not null,
  "stage" text collate "C" not null,
  "firingKind" text collate "C",
  "dueOn" text collate "C",
  "ownerNote" text collate "C" not null,
  "clayBodyId" text collate "C",
  "glazeId" text collate "C",
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "wareClayBody" foreign key ("clayBodyId") references "clayBodies" ("id"),
  constraint "wareGlaze" foreign key ("glazeId") references "glazes" ("id"),
  constraint "wareId" primary key ("id"));
create table "loads" ("id" text collate "C" not null,
  "kilnId" text collate "C" not null,
  "name" text collate "C" not null,
  "state" text collate "C" not null,
  "request" text collate "C" not null,
  "plan" text collate "C",
  "pins" text collate "C" not null,
  "ticks" text collate "C" not null,
  "sources" text collate "C" not null,
  "version" integer not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "loadKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "loadsId" primary key ("id"));
create table "firings" ("id" text collate "C" not null,
  "kilnId" text collate "C" not null,
  "loadId" text collate "C",
  "name" text collate "C" not null,
  "state" text collate "C" not null,
  "programme" text collate "C",
  "startedAt" text collate "C",
  "endedAt" text collate "C",
  "meterReadings" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "firingKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "firingLoad" foreign key ("loadId") references "loads" ("id"),
  constraint "firingsId" primary key ("id"));
create table "notes" ("id" text collate "C" not null,
  "aboutKind" text collate "C",
  "aboutId" text collate "C",
  "text" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "notesId" primary key ("id"));
create table "photos" ("id" text collate "C" not null,
  "aboutKind" text collate "C",
  "aboutId" text collate "C",
  "mediaType" text collate "C" not null,
  "byteLength" integer not null,
  "caption" text collate "C" not null,
  "takenAt" text collate "C",
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "photosId" primary key ("id"));
create table "pictures" ("photoId" text collate "C" not null,
  "bytes" bytea not null,
  constraint "picturePhotoId" primary key ("photoId"),
  constraint "picturePhoto" foreign key ("photoId") references "photos" ("id") on delete cascade);
create table "readings" ("firingId" text collate "C" not null,
  "probe" text collate "C" not null,
  "at" text collate "C" not null,
  "tempC" double precision not null,
  constraint "readingMoment" primary key ("firingId", "probe", "at"),
  constraint "readingFiring" foreign key ("firingId") references "firings" ("id") on delete cascade);
create index "wareByStage" on "ware" ("stage");
create index "wareByClayBody" on "ware" ("clayBodyId");
create index "wareByGlaze" on "ware" ("glazeId");
create index "loadsByKiln" on "loads" ("kilnId");
create index "firingsByKiln" on "firings" ("kilnId");
create index "firingsByLoad" on "firings" ("loadId");
create index "notesByAbout" on "notes" ("aboutKind", "aboutId");
create index "photosByAbout" on "photos" ("aboutKind", "aboutId");

-- 0002-history-and-settings
alter table "loads" add column "alternativeOf" text collate "C";
alter table "loads" add column "takenBack" text collate "C";
create table "settings" ("id" text collate "C" not null,
  "settings" text collate "C" not null,
  constraint "settingsId" primary key ("id"));
create table "history" ("id" text collate "C" not null,
  "place" integer not null,
  "at" text collate "C" not null,
  "scope" text collate "C" not null,
  "command" text collate "C" not null,
  "summary" text collate "C" not null,
  "standing" text collate "C" not null,
  "changes" text collate "C" not null,
  "settings" text collate "C",
  constraint "historyId" primary key ("id"));
create table "historyPictures" ("entryId" text collate "C" not null,
  "photoId" text collate "C" not null,
  "bytes" bytea not null,
  constraint "historyPicture" primary key ("entryId", "photoId"),
  constraint "historyPictureEntry" foreign key ("entryId") references "history" ("id") on delete cascade);
create unique index "historyByPlace" on "history" ("place");
create index "historyByScope" on "history" ("scope", "place");

-- 0003-around-the-firing
alter table "firings" add column "plannedStartAt" text collate "C";
alter table "firings" add column "shutOffAt" text collate "C";
alter table "firings" add column "foretold" text collate "C";
alter table "firings" add column "checklist" text collate "C";
alter table "firings" add column "cones" text collate "C";
alter table "firings" add column "outcomes" text collate "C";
alter table "firings" add column "notices" text collate "C";
create table "programmes" ("id" text collate "C" not null,
  "programme" text collate "C" not null,
  "note" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "programmesId" primary key ("id"));
create table "calibrations" ("id" text collate "C" not null,
  "kilnId" text collate "C" not null,
  "at" text collate "C" not null,
  "firingIds" text collate "C" not null,
  "calibration" text collate "C" not null,
  "learned" text collate "C",
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "calibrationKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "calibrationsId" primary key ("id"));
create table "upkeep" ("id" text collate "C" not null,
  "kilnId" text collate "C" not null,
  "at" text collate "C" not null,
  "what" text collate "C" not null,
  "ohms" text collate "C",
  "count" integer,
  "note" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "upkeepKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "upkeepId" primary key ("id"));
create table "loggers" ("id" text collate "C" not null,
  "kilnId" text collate "C" not null,
  "probe" text collate "C" not null,
  "name" text collate "C" not null,
  "tokenHash" text collate "C" not null,
  "createdAt" text collate "C" not null,
  "changedAt" text collate "C" not null,
  constraint "loggerKiln" foreign key ("kilnId") references "kilns" ("id"),
  constraint "loggersId" primary key ("id"));
create table "historyReadings" ("entryId" text collate "C" not null,
  "firingId" text collate "C" not null,
  "probe" text collate "C" not null,
  "readings" text collate "C" not null,
  constraint "historyReadingsOf" primary key ("entryId", "firingId", "probe"),
  constraint "historyReadingsEntry" foreign key ("entryId") references "history" ("id") on delete cascade);
create index "calibrationsByKiln" on "calibrations" ("kilnId", "at");
create index "upkeepByKiln" on "upkeep" ("kilnId", "at");
create index "loggersByKiln" on "loggers" ("kilnId");

-- 0004-roll-ups
create table "readingRollUps" ("firingId" text collate "C" not null,
  "period" text collate "C" not null,
  "probe" text collate "C" not null,
  "at" text collate "C" not null,
  "count" integer not null,
  "leastC" double precision not null,
  "mostC" double precision not null,
  "sumC" double precision not null,
  "firstAt" text collate "C" not null,
  "firstC" double precision not null,
  "lastAt" text collate "C" not null,
  "lastC" double precision not null,
  constraint "readingRollUp" primary key ("firingId", "period", "probe", "at"),
  constraint "rollUpFiring" foreign key ("firingId") references "firings" ("id") on delete cascade);

-- 0005-judgements-taken-back
alter table "firings" add column "takenBack" text collate "C";
