import { Type } from "typebox";
import { Id } from "../records/fields.ts";
import { NOTES, NoteRecordSchema, PHOTOS, PhotoRecordSchema } from "../records/note-and-photo-records.ts";
import { opening } from "./in-words.ts";
import { command, input, NewId } from "./inputs.ts";
import { begun, changeKept, given, kept } from "./keeping.ts";

const { aboutKind, aboutId, text } = NoteRecordSchema.properties;
const { caption, takenAt } = PhotoRecordSchema.properties;
const about = { aboutKind: Type.Optional(aboutKind), aboutId: Type.Optional(aboutId) };

export const NewNoteSchema = input({ id: NewId, aboutKind, aboutId, text });
/** A note that is to be kept. */

const addNote = command({
  name: "add-note",
  schema: NewNoteSchema,
  scope: () => "notes",
  run: async (records, { id, ...note }, context) => {
    await records.notes.add({ ...note, ...begun(id, context) });
    return `Wrote “${opening(note.text)}”`;
  },
});

const changeNote = command({
  name: "change-note",
  schema: input({ id: Id("The note."), ...about, text: Type.Optional(text) }),
  scope: () => "notes",
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.notes, NOTES, id);
    const after = await changeKept(records.notes, before, { ...before, ...given(change) }, now);
    return `Changed the note “${opening(after.text)}”`;
  },
});

const removeNote = command({
  name: "remove-note",
  schema: input({ id: Id("The note.") }),
  scope: () => "notes",
  run: async (records, { id }) => {
    const before = await kept(records.notes, NOTES, id);
    await records.notes.remove(id);
    return `Took out the note “${opening(before.text)}”`;
  },
});

// A photo comes with its picture, which is no JSON: `addPhoto` keeps it.

const changePhoto = command({
  name: "change-photo",
  schema: input({ id: Id("The photo."), ...about, caption: Type.Optional(caption), takenAt: Type.Optional(takenAt) }),
  scope: () => "photos",
  run: async (records, { id, ...change }, { now }) => {
    const before = await kept(records.photos, PHOTOS, id);
    const after = await changeKept(records.photos, before, { ...before, ...given(change) }, now);
    return `Changed ${photoInWords(after.caption)}`;
  },
});

const removePhoto = command({
  name: "remove-photo",
  schema: input({ id: Id("The photo.") }),
  scope: () => "photos",
  run: async (records, { id }) => {
    const before = await kept(records.photos, PHOTOS, id);
    await records.photos.remove(id);
    return `Took out ${photoInWords(before.caption)}`;
  },
});

/** A photo in a sentence. */
export const photoInWords = (words: string): string =>
  words.trim() === "" ? "a photo" : `the photo “${opening(words)}”`;

export const NOTE_AND_PHOTO_COMMANDS = [addNote, changeNote, removeNote, changePhoto, removePhoto];
