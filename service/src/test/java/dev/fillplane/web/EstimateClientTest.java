package dev.fillplane.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fillplane.client.FillplaneClient;
import dev.fillplane.client.ProblemException;
import dev.fillplane.client.generated.ApiClient;
import dev.fillplane.client.generated.api.CataloguesApi;
import dev.fillplane.client.generated.api.EstimatesApi;
import dev.fillplane.client.generated.model.Capabilities;
import dev.fillplane.client.generated.model.ItemInfo;
import dev.fillplane.client.generated.model.ItemPrice;
import dev.fillplane.client.generated.model.LineItem;
import dev.fillplane.client.generated.model.LineItems;
import dev.fillplane.client.generated.model.LineItemsRequest;
import dev.fillplane.client.generated.model.WorkRate;
import dev.fillplane.estimate.Item;
import dev.fillplane.estimate.LabourRole;
import dev.fillplane.web.json.Words;
import java.io.File;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Estimates through the generated client. */
class EstimateClientTest {

  private static final ObjectMapper JSON = ApiClient.createDefaultObjectMapper();
  private static final FillplaneClient CLIENT = FillplaneClient.at(RunningService.uri()).build();
  private static final EstimatesApi ESTIMATES = CLIENT.api(EstimatesApi::new);
  private static final CataloguesApi CATALOGUES = CLIENT.api(CataloguesApi::new);

  private static LineItemsRequest request() {
    return JSON.convertValue(RunningService.example("line-items.json"), LineItemsRequest.class);
  }

  @Test
  void tellsAPlanLineByLine() {
    LineItems items = CLIENT.call(() -> ESTIMATES.listLineItems(request()));
    LineItem first = items.getLines().get(0);
    assertEquals("underlayment", first.getCode());
    assertEquals("SLU-25 (invented)", first.getOwnCode());
    assertEquals("{bag}", first.getOrder().getUnit());
    assertEquals("184.00", first.getAmount().getAmount());
    assertEquals("EUR", items.getTotals().getTotal().getCurrency());
    assertEquals(2, items.getAlternates().size());
    assertEquals("1950.00", items.getOwnOrBid().getBid().getAmount());
    assertEquals("#/plan/material", items.getWarnings().get(0).getPointer());
  }

  @Test
  void tellsItAsATable() throws Exception {
    File table = CLIENT.call(() -> ESTIMATES.listLineItemsAsTable(request()));
    List<String> rows = Files.readAllLines(table.toPath());
    assertTrue(rows.get(0).startsWith("code,own code,reference"));
    assertTrue(rows.size() > 20);
    Files.delete(table.toPath());
  }

  @Test
  void refusalsAreProblems() {
    LineItemsRequest request = request();
    request.getPrices().putItemsItem("gold", new ItemPrice().price("1").per("kg"));
    ProblemException refused =
        assertThrows(
            ProblemException.class, () -> CLIENT.call(() -> ESTIMATES.listLineItems(request)));
    assertEquals("unknown-item", refused.errors().get(0).code());
  }

  @Test
  void capabilitiesTellItemsAndRates() {
    Capabilities capabilities = CLIENT.call(CATALOGUES::getCapabilities);
    assertEquals(
        Arrays.stream(Item.values()).map(Item::code).toList(),
        capabilities.getItems().stream().map(ItemInfo::getCode).toList());
    ItemInfo primer = capabilities.getItems().get(1);
    assertEquals("material", primer.getKind());
    assertEquals("03 54 16", primer.getReference());
    assertEquals(List.of("L", "m3"), primer.getMetric());
    assertEquals(List.of("[qt_us]", "[gal_us]", "[cft_i]"), primer.getUs());
    WorkRate blast = capabilities.getRates().get(0);
    assertEquals("#/rates/blast", blast.getPointer());
    assertEquals(30, blast.getMetric().getValue());
    assertEquals(322.917312501, blast.getUs().getValue(), 1e-9);
    assertEquals(0.1, blast.getMetricRange().getFrom());
  }

  /** Roles are told and answered by the same words. */
  @Test
  void rolesHaveTheirWords() {
    for (LabourRole role : LabourRole.values()) {
      assertEquals(Words.of(role), role.code());
    }
  }
}
