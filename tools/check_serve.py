#!/usr/bin/python3
"""Starts the server as ./run does, uses it once, and stops it. Usage: tools/check_serve.py PROGRAM WEB_FOLDER"""
import json
import re
import signal
import subprocess
import sys
import time
import urllib.error
import urllib.request

import tree

PATIENCE_SECONDS = 60  # for a busy machine; the server itself promises to stop within two


def expect(condition, what):
    if not condition:
        raise SystemExit(f"failed: {what}")
    print(f"ok: {what}")


def main():
    program, web = sys.argv[1:3]
    server = subprocess.Popen([program, "serve", "--demo", "--listen", "127.0.0.1:0", "--web", web], stdout=subprocess.PIPE, text=True)
    try:
        line = server.stdout.readline()
        found = re.fullmatch(r"Last Egg is at (http://127\.0\.0\.1:(\d+)/)\?demo\n", line)
        expect(found, f"the first line names the address: {line.strip()}")
        address, port = found.groups()
        with urllib.request.urlopen(address, timeout=PATIENCE_SECONDS) as page:
            text = page.read().decode()
            policy = page.headers["Content-Security-Policy"]
        expect("<script" in text and "Last Egg" in text, "the page is served")
        inline = re.findall(r"<script(?![^>]*\bsrc=)[^>]*>", text)
        expect(not inline and "'unsafe-inline'" not in policy.split("style-src")[0], "it has no inline script, and none is allowed")
        for script in re.findall(r'(?:src|href)="\.?/?([^":]+\.(?:js|css|webmanifest))"', text):
            with urllib.request.urlopen(address + script, timeout=PATIENCE_SECONDS) as file:
                expect(file.status == 200 and file.read(), f"{script} is served as {file.headers['Content-Type']}")
        with urllib.request.urlopen(address + "sw.js", timeout=PATIENCE_SECONDS) as worker:
            stored = re.findall(r"assets/lastegg-[\w-]+\.wasm", worker.read().decode())
        expect(len(stored) == 1, f"the service worker stores one engine: {', '.join(stored)}")
        with urllib.request.urlopen(address + stored[0], timeout=PATIENCE_SECONDS) as engine:
            expect(engine.headers["Content-Type"] == "application/wasm" and engine.read(4) == b"\0asm", "the engine is served as WebAssembly")
        with urllib.request.urlopen(address + "demo/apartment.ndjson", timeout=PATIENCE_SECONDS) as demo:
            events = [json.loads(event) for event in demo.read().decode().splitlines()]
        expect(events and all("id" in event for event in events), f"the demo job is served: {len(events)} events")
        asked = urllib.request.Request(address + "api/ask/saturation", (tree.ROOT / "examples/saturation.json").read_bytes(),
                                       {"Content-Type": "application/json"})
        with urllib.request.urlopen(asked, timeout=PATIENCE_SECONDS) as answer:
            over_http = json.load(answer)
        by_command = json.loads(subprocess.run([program, "ask", "saturation", str(tree.ROOT / "examples/saturation.json")],
                                               capture_output=True, check=True).stdout)
        expect(over_http == by_command, "a question has the same answer over HTTP and on the command line")
        second = subprocess.run([program, "serve", "--listen", f"127.0.0.1:{port}"], capture_output=True, text=True, timeout=PATIENCE_SECONDS)
        expect(second.returncode == 2 and "already listens" in second.stderr, "a second server on the same port is refused")
        beginning = time.monotonic()
        server.send_signal(signal.SIGINT)
        code = server.wait(PATIENCE_SECONDS)
        expect(code == 0, f"Ctrl-C ends it cleanly, after {time.monotonic() - beginning:.1f} s")
    finally:
        if server.poll() is None:
            server.kill()
            server.wait()


if __name__ == "__main__":
    main()
