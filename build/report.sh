# What ./check says, and how it installs. Sourced.

failures=()
passes=0
section() { printf '\n== %s\n' "$1"; }
say() { printf '%s\n' "$1"; }
passed() { passes=$((passes + 1)); printf 'held    %s\n' "$1"; }
failed() { failures+=("$1"); printf 'FAILED  %s\n' "$1"; }

can_install() { [ "$(id -u)" = 0 ] && type -P apt-get > /dev/null; }

# Installs Debian package $1; its chatter goes to a file.
install_quietly() {
    mkdir -p "$here/target"
    say "Installing $1 ..."
    if [ -z "${_updated:-}" ]; then
        apt-get -q update > "$here/target/apt.log" 2>&1 < /dev/null
        _updated=yes
    fi
    DEBIAN_FRONTEND=noninteractive apt-get -q -y install --no-install-recommends "$1" >> "$here/target/apt.log" 2>&1 < /dev/null ||
        { say "$1 could not be installed (see target/apt.log)"; return 1; }
}

# Sets browser to a Chromium or Chrome of this machine.
find_browser() {
    local name
    browser=${EGGWRIGHT_BROWSER:-}
    [ -n "$browser" ] && [ -x "$browser" ] && return
    for name in chromium chromium-browser google-chrome google-chrome-stable; do
        browser=$(type -P "$name") && return
    done
    for browser in '/Applications/Chromium.app/Contents/MacOS/Chromium' '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'; do
        [ -x "$browser" ] && return
    done
    browser=
    return 1
}

core_rooms() {
    local pom rooms=
    for pom in core/*/pom.xml; do rooms+=,${pom%/pom.xml}; done
    printf '%s' "${rooms:1}"
}

# Counts the tests in the reports written since the run began, then ends with 0 or 1.
summary() {
    section 'Summary'
    find . -path '*/target/surefire-reports/TEST-*.xml' -newer target/check.begun -exec grep -h -m1 '<testsuite ' {} + |
        awk '{ for (i = 1; i <= NF; i++) { if (match($i, /^(tests|errors|skipped|failures)="[0-9]+"/)) { split($i, kv, "\""); sum[substr(kv[1], 1, length(kv[1]) - 1)] += kv[2] } } suites++ }
             END { printf "%d tests in %d classes: %d failed, %d left out\n", sum["tests"], suites, sum["failures"] + sum["errors"], sum["skipped"] }'
    say "$passes checks held, ${#failures[@]} failed; $((SECONDS / 60)) min $((SECONDS % 60)) s"
    if [ ${#failures[@]} -gt 0 ]; then
        printf '  %s\n' "${failures[@]}"
        exit 1
    fi
    say 'All is well.'
    exit 0
}
