# shellcheck shell=bash disable=SC2034,SC2154  # sets and reads variables of the script that sources it
# Sourced by ./run and ./test: named steps with their durations, each with a log of its own.
# A step that fails shows the end of its log and ends the script.

logs="$root/build/logs/${0##*/}"
steps_passed=0
python=/usr/bin/python3  # Debian's own, for which Debian's Python packages are installed

export CCACHE_BASEDIR="$root"
export CCACHE_NOHASHDIR=1
export CCACHE_SLOPPINESS=pch_defines,time_macros  # without them it leaves sources with precompiled headers alone

say() { printf '%s\n' "$*"; }

# seconds_since START: whole and tenths of seconds since a time taken with now().
now() { date +%s%N; }
seconds_since() { local tenths=$((($(now) - $1) / 100000000)); printf '%d.%d' $((tenths / 10)) $((tenths % 10)); }

# step "title" command [argument ...]: runs the command with its output in a log.
step() {
  local title="$1" start log
  shift
  mkdir -p "$logs"
  log="$logs/$(printf '%02d' $((steps_passed + 1)))-$(printf '%s' "$title" | tr -c 'A-Za-z0-9\n' '-').log"
  printf '%-58s ' "$title"
  start=$(now)
  if "$@" >"$log" 2>&1 </dev/null; then
    steps_passed=$((steps_passed + 1))
    last_log="$log"
    printf 'ok    %7s s\n' "$(seconds_since "$start")"
  else
    printf 'FAIL  %7s s\n' "$(seconds_since "$start")"
    say ''
    tail -n 60 "$log"
    say ''
    say "The whole log: ${log#"$root"/}"
    on_failure
    exit 1
  fi
}

# Replaced by a script that has something to say at the end of a failed run.
on_failure() { :; }
