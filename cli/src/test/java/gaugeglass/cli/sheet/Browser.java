package gaugeglass.cli.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The Chromium of this machine, without a window, driven over its own remote protocol: a person's taps and keys, and a look
 * at what the page shows.
 */
final class Browser implements AutoCloseable {
    private static final JsonMapper JSON = new JsonMapper();
    private static final long PATIENCE_SECONDS = 30;

    private final Process process;
    private final WebSocket socket;
    private final AtomicInteger ids = new AtomicInteger();
    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final List<String> requests = new CopyOnWriteArrayList<>();
    private final List<String> errors = new CopyOnWriteArrayList<>();
    private final List<String> dialogs = new CopyOnWriteArrayList<>();
    private String session = "";

    private Browser(Process process, URI address) throws Exception {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(address, new Listener())
                .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** Where a Chromium is; empty where this machine has none. */
    static Optional<Path> found() {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator)) {
            for (String name : List.of("chromium", "chromium-browser", "google-chrome")) {
                Path path = Path.of(folder, name);
                if (Files.isExecutable(path)) {
                    return Optional.of(path);
                }
            }
        }
        return Optional.empty();
    }

    /** Opens a phone's screen with a profile of its own. */
    static Browser open(Path profile) throws Exception {
        Process process = new ProcessBuilder(
                        found().orElseThrow().toString(),
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
        String address = "";
        for (String line = said.readLine(); line != null && address.isEmpty(); ) {
            int at = line.indexOf("ws://");
            address = at < 0 ? "" : line.substring(at).strip();
            line = address.isEmpty() ? said.readLine() : line;
        }
        if (address.isEmpty()) {
            throw new IllegalStateException("the browser ended before it could be driven");
        }
        Thread drain = new Thread(() -> said.lines().forEach(line -> {}), "browser");
        drain.setDaemon(true);
        drain.start();
        Browser browser = new Browser(process, URI.create(address));
        String target = browser.call("Target.createTarget", Map.of("url", "about:blank"))
                .get("targetId")
                .asString();
        browser.session = browser.call("Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .get("sessionId")
                .asString();
        for (String domain : List.of("Page", "Runtime", "Network", "DOM", "Log")) {
            browser.call(domain + ".enable", Map.of());
        }
        browser.call(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 390, "height", 844, "deviceScaleFactor", 2, "mobile", true));
        return browser;
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                heard(JSON.readTree(text.toString()));
                text.setLength(0);
            }
            from.request(1);
            return null;
        }
    }

    private void heard(JsonNode message) {
        if (message.has("id")) {
            CompletableFuture<JsonNode> answer =
                    waiting.remove(message.get("id").asInt());
            if (answer != null) {
                answer.complete(message);
            }
            return;
        }
        JsonNode params = message.path("params");
        switch (message.path("method").asString()) {
            case "Network.requestWillBeSent" ->
                requests.add(params.path("request").path("url").asString());
            case "Runtime.exceptionThrown" ->
                errors.add(params.path("exceptionDetails").toString());
            case "Log.entryAdded" ->
                errors.add(params.path("entry").path("text").asString());
            case "Page.javascriptDialogOpening" -> {
                dialogs.add(params.path("message").asString());
                send("Page.handleJavaScriptDialog", Map.of("accept", true));
            }
            default -> {}
        }
    }

    private CompletableFuture<JsonNode> send(String method, Map<String, ?> params) {
        int id = ids.incrementAndGet();
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(id, answer);
        Map<String, Object> message = new java.util.LinkedHashMap<>();
        message.put("id", id);
        message.put("method", method);
        message.put("params", params);
        if (!session.isEmpty()) {
            message.put("sessionId", session);
        }
        synchronized (socket) {
            socket.sendText(JSON.writeValueAsString(message), true).join();
        }
        return answer;
    }

    JsonNode call(String method, Map<String, ?> params) {
        try {
            JsonNode answer = send(method, params).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
            if (answer.has("error")) {
                throw new IllegalStateException(method + ": " + answer.get("error"));
            }
            return answer.get("result");
        } catch (InterruptedException | ExecutionException | TimeoutException e) {
            throw new IllegalStateException(method + " was not answered", e);
        }
    }

    /** What an expression of the page's own language comes to. */
    JsonNode value(String expression) {
        JsonNode answer = call(
                "Runtime.evaluate",
                Map.of("expression", expression, "returnByValue", true, "awaitPromise", true, "userGesture", true));
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(expression + ": " + answer.get("exceptionDetails"));
        }
        return answer.path("result").path("value");
    }

    String text(String expression) {
        return value(expression).asString("");
    }

    void go(Path page) {
        call("Page.navigate", Map.of("url", page.toUri().toString()));
        await("document.readyState === 'complete' && document.querySelector('#screen h1') !== null");
    }

    void reload() {
        value("window.isBeforeReload = true");
        call("Page.reload", Map.of());
        await("window.isBeforeReload === undefined && document.readyState === 'complete'"
                + " && document.querySelector('#screen h1') !== null");
    }

    /** Waits for what the page does by itself. */
    void await(String condition) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (System.nanoTime() < end) {
            try {
                if (value(condition).asBoolean(false)) {
                    return;
                }
                Thread.sleep(20);
            } catch (IllegalStateException e) {
                // The page is being changed under the question.
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        throw new IllegalStateException(
                "in vain: " + condition + "; the page shows: " + text("document.body.innerText"));
    }

    /** Runs a script in every page before the page's own. */
    void before(String script) {
        call("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
    }

    /** Taps what an expression finds, where a finger would. */
    void tap(String element) {
        JsonNode at = value(
                "(() => { const one = " + element + "; if (!one) return null; one.scrollIntoView({block: 'center'});"
                        + " const box = one.getBoundingClientRect(); const x = box.x + box.width / 2; const y = box.y + box.height / 2;"
                        + " const top = document.elementFromPoint(x, y);"
                        + " return {x, y, isOnTop: top === one || one.contains(top) || top !== null && top.contains(one)}; })()");
        if (!at.isObject() || !at.get("isOnTop").asBoolean()) {
            throw new IllegalStateException(
                    "nothing to tap: " + element + " (" + at + "); the page shows: " + text("document.body.innerText"));
        }
        for (String type : List.of("mousePressed", "mouseReleased")) {
            call(
                    "Input.dispatchMouseEvent",
                    Map.of(
                            "type",
                            type,
                            "x",
                            at.get("x").asDouble(),
                            "y",
                            at.get("y").asDouble(),
                            "button",
                            "left",
                            "clickCount",
                            1));
        }
    }

    /** Taps the button with these words. */
    void button(String words) {
        tap("[...document.querySelectorAll('button')].find((one) => one.textContent === " + quoted(words) + ")");
    }

    /** Types into a field in the place of what stands there. */
    void type(String element, String text) {
        tap(element);
        value(element + ".select()");
        call("Input.insertText", Map.of("text", text));
    }

    /** Presses one key. */
    void key(String key, String code, int number) {
        for (String type : List.of("rawKeyDown", "keyUp")) {
            call(
                    "Input.dispatchKeyEvent",
                    Map.of("type", type, "key", key, "code", code, "windowsVirtualKeyCode", number));
        }
    }

    /** Presses a key that writes something, as Enter does. */
    void enter() {
        call(
                "Input.dispatchKeyEvent",
                Map.of("type", "keyDown", "key", "Enter", "code", "Enter", "windowsVirtualKeyCode", 13, "text", "\r"));
        call(
                "Input.dispatchKeyEvent",
                Map.of("type", "keyUp", "key", "Enter", "code", "Enter", "windowsVirtualKeyCode", 13));
    }

    void choose(String selector, Path file) {
        int root = call("DOM.getDocument", Map.of()).get("root").get("nodeId").asInt();
        int node = call("DOM.querySelector", Map.of("nodeId", root, "selector", selector))
                .get("nodeId")
                .asInt();
        call("DOM.setFileInputFiles", Map.of("nodeId", node, "files", List.of(file.toString())));
    }

    void downloadsTo(Path folder) {
        call("Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", folder.toString()));
    }

    void picture(Path file) {
        try {
            Files.write(
                    file,
                    Base64.getDecoder()
                            .decode(call("Page.captureScreenshot", Map.of("captureBeyondViewport", false))
                                    .get("data")
                                    .asString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Everything that was asked of a network, a file or anywhere else. */
    List<String> requests() {
        return List.copyOf(requests);
    }

    List<String> errors() {
        return List.copyOf(errors);
    }

    List<String> dialogs() {
        return new ArrayList<>(dialogs);
    }

    static String quoted(String text) {
        return JSON.writeValueAsString(text);
    }

    static JsonNode read(String json) {
        return JSON.readTree(json);
    }

    @Override
    public void close() throws Exception {
        session = "";
        try {
            send("Browser.close", Map.of());
        } finally {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly();
            }
        }
    }
}
