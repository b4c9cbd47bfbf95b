#!/usr/bin/env bash
# test/tools/synapse.sh: installs the chat server and the second client that the Matrix tests talk to, into .synapse/.
# Needs python3 (3.10 or later) with venv and pip. Run it once; it does nothing where both are there.
set -euo pipefail
cd "$(dirname "$0")/../.."

synapse=1.163.2 # the chat server
nio=0.26.0      # a client that shares no code with the bot's

install() { # folder, package, version
  if [ -x "$1/bin/python" ] && [ -f "$1/.$3" ]; then return; fi
  rm -rf "$1"
  python3 -m venv "$1"
  "$1/bin/pip" install --quiet --disable-pip-version-check "$2" 2> >(grep -v '^WARNING: Location' >&2)
  touch "$1/.$3"
}

mkdir -p .synapse
install .synapse/server "matrix-synapse==$synapse" "$synapse"
install .synapse/nio "matrix-nio[e2e]==$nio" "$nio"
echo "Synapse $synapse and matrix-nio $nio are in .synapse/"
