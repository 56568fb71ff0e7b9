package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cases of RFC 7396, appendix A, as public test suites carry them; quotes are single here. */
class MergePatchTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "{'a':'b'} | {'a':'c'} | {'a':'c'}",
        "{'a':'b'} | {'b':'c'} | {'a':'b','b':'c'}",
        "{'a':'b'} | {'a':null} | {}",
        "{'a':'b','b':'c'} | {'a':null} | {'b':'c'}",
        "{'a':['b']} | {'a':'c'} | {'a':'c'}",
        "{'a':'c'} | {'a':['b']} | {'a':['b']}",
        "{'a':{'b':'c'}} | {'a':{'b':'d','c':null}} | {'a':{'b':'d'}}",
        "{'a':[{'b':'c'}]} | {'a':[1]} | {'a':[1]}",
        "['a','b'] | ['c','d'] | ['c','d']",
        "{'a':'b'} | ['c'] | ['c']",
        "{'a':'foo'} | null | null",
        "{'a':'foo'} | 'bar' | 'bar'",
        "{'e':null} | {'a':1} | {'e':null,'a':1}",
        "[1,2] | {'a':'b','c':null} | {'a':'b'}",
        "{} | {'a':{'bb':{'ccc':null}}} | {'a':{'bb':{}}}",
      })
  void mergesAsTheStandardSays(String document, String patch, String result) {
    assertEquals(
        Refusals.tree(result), MergePatch.merged(Refusals.tree(document), Refusals.tree(patch)));
  }

  @Test
  void theDocumentStaysAsItIs() {
    JsonNode document = Refusals.tree("{'a':{'b':1}}");
    MergePatch.merged(document, Refusals.tree("{'a':{'b':2,'c':3}}"));
    assertEquals(Refusals.tree("{'a':{'b':1}}"), document);
  }
}
