package peakproof.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Chromium's own protocol for tools: a call a message, and events in between. */
final class DevTools implements WebSocket.Listener, AutoCloseable {
  private static final int MOST_SECONDS = 30;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final AtomicInteger calls = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> open = new ConcurrentHashMap<>();
  private final BlockingQueue<JsonNode> events = new LinkedBlockingQueue<>();
  private final StringBuilder message = new StringBuilder();
  private final WebSocket socket;

  DevTools(URI address) {
    this.socket = HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(address, this).join();
  }

  /** Asks and waits for the answer. */
  JsonNode call(String method, Map<String, ?> arguments) {
    int id = calls.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    open.put(id, answer);
    String text =
        JSON.valueToTree(Map.of("id", id, "method", method, "params", arguments)).toString();
    socket.sendText(text, true).join();
    JsonNode told = answer.orTimeout(MOST_SECONDS, TimeUnit.SECONDS).join();
    if (told.has("error")) {
      throw new IllegalStateException(method + ": " + told.get("error"));
    }
    return told.get("result");
  }

  /** Waits for an event of that name; what came before it goes to nobody. */
  void await(String event) {
    try {
      JsonNode next;
      do {
        next = events.poll(MOST_SECONDS, TimeUnit.SECONDS);
        if (next == null) {
          throw new IllegalStateException("no " + event);
        }
      } while (!next.path("method").asText().equals(event));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  void forgetEvents() {
    events.clear();
  }

  @Override
  public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
    message.append(part);
    if (last) {
      take(message.toString());
      message.setLength(0);
    }
    from.request(1);
    return null;
  }

  private void take(String text) {
    try {
      JsonNode told = JSON.readTree(text);
      CompletableFuture<JsonNode> asked = open.remove(told.path("id").asInt(-1));
      if (asked != null) {
        asked.complete(told);
      } else {
        events.add(told);
      }
    } catch (java.io.IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    socket.abort();
  }
}
