# Finds a fitting Java development kit. Sourced by ./eggwright and ./check; starts no process on the usual way through.
#
# eggwright_find_jdk sets EGGWRIGHT_JDK (its folder), EGGWRIGHT_JDK_VERSION (25.0.3) and EGGWRIGHT_JDK_FEATURE (25),
# or returns 1. A JAVA_HOME that fits is taken, for somebody chose it; otherwise the newest of all that are found.

EGGWRIGHT_JDK_OLDEST=21

# The sentence lives in pom.xml, where a plain mvn on too old a kit says it too.
eggwright_no_jdk() {
    local line
    while IFS= read -r line; do
        case $line in
            *'<eggwright.noJdk>'*)
                line=${line#*<eggwright.noJdk>}
                printf '%s\n' "${line%</eggwright.noJdk>*}" >&2
                return ;;
        esac
    done < "$1/pom.xml"
}

# Sets _version of the kit in folder $1; returns 1 where there is none.
eggwright_jdk_version() {
    local line
    _version=
    [ -x "$1/bin/javac" ] && [ -x "$1/bin/java" ] || return 1
    if [ -r "$1/release" ]; then
        while IFS= read -r line; do
            case $line in
                JAVA_VERSION=*) _version=${line#JAVA_VERSION=}; _version=${_version//\"/}; break ;;
            esac
        done < "$1/release"
    fi
    if [ -z "$_version" ]; then
        line=$("$1/bin/javac" -version 2>&1) || return 1
        _version=${line##* }
    fi
    _version=${_version%$'\r'}
}

# Keeps folder $1 where it fits and is newer than what was kept before.
eggwright_consider_jdk() {
    local feature
    eggwright_jdk_version "$1" || return 0
    feature=${_version%%[!0-9]*}
    [ "${feature:-0}" -ge "$EGGWRIGHT_JDK_OLDEST" ] || return 0
    if [ "$feature" -gt "$EGGWRIGHT_JDK_FEATURE" ]; then
        EGGWRIGHT_JDK=$1 EGGWRIGHT_JDK_VERSION=$_version EGGWRIGHT_JDK_FEATURE=$feature
    fi
}

eggwright_find_jdk() {
    local command folder
    EGGWRIGHT_JDK='' EGGWRIGHT_JDK_VERSION='' EGGWRIGHT_JDK_FEATURE=0
    if [ -n "${JAVA_HOME:-}" ]; then
        eggwright_consider_jdk "$JAVA_HOME"
        [ -n "$EGGWRIGHT_JDK" ] && return 0
    fi
    # EGGWRIGHT_JDK_FOLDERS stands in for the usual folders in tests.
    for folder in ${EGGWRIGHT_JDK_FOLDERS-/usr/lib/jvm/* /usr/lib64/jvm/* /opt/* /usr/java/* /usr/local/openjdk* \
        /Library/Java/JavaVirtualMachines/*/Contents/Home} \
        "${HOME:-}"/.sdkman/candidates/java/* "${HOME:-}"/.jdks/* \
        "${HOME:-}"/Library/Java/JavaVirtualMachines/*/Contents/Home; do
        eggwright_consider_jdk "$folder"
    done
    # One that is only on PATH, wherever it lies.
    if [ -z "$EGGWRIGHT_JDK" ] && command=$(type -P javac) && command=$(readlink -f "$command" 2>/dev/null); then
        eggwright_consider_jdk "${command%/bin/javac}"
    fi
    [ -n "$EGGWRIGHT_JDK" ]
}
