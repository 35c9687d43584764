import type { FastifySchemaCompiler } from "fastify";
import type { TSchema } from "typebox";
import { Compile } from "typebox/compile";
import { BadInput } from "../../measures/bad-input.ts";
import { readBySchema } from "../../measures/read-schema.ts";

/**
 * Fastify's question to every part of a request, answered by the schema the route was written with: nothing is turned
 * into another type, no unknown field is dropped in silence, and a refusal is in Wareboard's own words.
 */
export const checkRequest: FastifySchemaCompiler<TSchema> = ({ schema }) => {
  const validator = Compile(schema);
  return (value: unknown) => {
    if (validator.Check(value)) return { value };
    try {
      return { value: readBySchema(schema, value) };
    } catch (error) {
      if (error instanceof BadInput) return { error };
      throw error;
    }
  };
};

/** The same where the body is bytes, of which a schema says nothing. */
export const checkAllButBody: FastifySchemaCompiler<TSchema> = (part) =>
  part.httpPart === "body" ? (value: unknown) => ({ value }) : checkRequest(part);
