package dev.fillplane.web.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;

/**
 * Reads the array {@code values} of the {@code table} of the {@code survey} of a request at once
 * and passes it on as one embedded {@link TableValues}; all else passes as it is.
 */
final class TableParser extends JsonParserDelegate {

  private final ObjectReader elements;
  private TableValues values;

  TableParser(JsonParser in, ObjectReader elements) {
    super(in);
    this.elements = elements;
  }

  @Override
  public JsonToken nextToken() throws IOException {
    values = null;
    JsonToken token = super.nextToken();
    if (token == JsonToken.START_ARRAY && atTableValues()) {
      values = TableValues.read(delegate, elements);
      return JsonToken.VALUE_EMBEDDED_OBJECT;
    }
    return token;
  }

  private boolean atTableValues() {
    JsonStreamContext context = delegate.getParsingContext();
    for (String name : new String[] {"values", "table", "survey"}) {
      context = context.getParent();
      if (context == null || !context.inObject() || !name.equals(context.getCurrentName())) {
        return false;
      }
    }
    return context.getParent() != null && context.getParent().inRoot();
  }

  @Override
  public JsonToken currentToken() {
    return values == null ? super.currentToken() : JsonToken.VALUE_EMBEDDED_OBJECT;
  }

  @Override
  public int currentTokenId() {
    return values == null ? super.currentTokenId() : JsonToken.VALUE_EMBEDDED_OBJECT.id();
  }

  @Override
  public boolean hasTokenId(int id) {
    return currentTokenId() == id;
  }

  @Override
  public boolean hasToken(JsonToken token) {
    return currentToken() == token;
  }

  @Override
  public Object getEmbeddedObject() throws IOException {
    return values == null ? super.getEmbeddedObject() : values;
  }
}
