/** Streams are texts of lines; `x-line` is the schema of one line, and is linted as such. */
export default function lines() {
  return {
    id: "lines",
    typeExtension: {
      oas3: (types) => ({
        ...types,
        Schema: {
          ...types.Schema,
          properties: { ...types.Schema.properties, "x-line": "Schema" },
        },
      }),
    },
  };
}
