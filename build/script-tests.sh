# Tests of the scripts and of the walls that poms draw. Sourced by ./check, which gives passed, failed, here, quick.

scratch=$(mktemp -d) || exit 3
trap 'rm -rf "$scratch"' EXIT

# A folder that looks like a JDK of version $2, at $1.
pretend_jdk() {
    mkdir -p "$1/bin"
    printf 'JAVA_VERSION="%s"\n' "$2" > "$1/release"
    printf '#!/bin/sh\n' > "$1/bin/java"
    cp "$1/bin/java" "$1/bin/javac"
    chmod +x "$1/bin/java" "$1/bin/javac"
}

found() { # JAVA_HOME, folders to search; prints the version found, or "none"
    (JAVA_HOME=$1 HOME=$scratch/nobody PATH=$scratch/none EGGWRIGHT_JDK_FOLDERS=$2
     eggwright_find_jdk && printf '%s' "$EGGWRIGHT_JDK_VERSION" || printf none)
}

holds() { # what, wanted, got
    if [ "$2" = "$3" ]; then passed "$1"; else failed "$1: wanted \"$2\", got \"$3\""; fi
}

pretend_jdk "$scratch/jdks/17" 17.0.9
pretend_jdk "$scratch/jdks/21" 21.0.4
pretend_jdk "$scratch/jdks/25" 25
pretend_jdk "$scratch/old/8" 1.8.0_402
holds 'the newest JDK is taken where JAVA_HOME is too old' 25 "$(found "$scratch/jdks/17" "$scratch/jdks/*")"
holds 'a JAVA_HOME that fits is taken' 21.0.4 "$(found "$scratch/jdks/21" "$scratch/jdks/*")"
holds 'a JAVA_HOME that is not there is passed over' 25 "$(found "$scratch/jdks/99" "$scratch/jdks/*")"
holds 'JDKs that are too old are not taken' none "$(found '' "$scratch/old/*")"

sentence=$(sed -n 's:.*<eggwright.noJdk>\(.*\)</eggwright.noJdk>.*:\1:p' pom.xml)
said=$(env -u JAVA_HOME HOME="$scratch/nobody" EGGWRIGHT_JDK_FOLDERS="$scratch/old/*" PATH="$scratch/path" "$BASH" ./eggwright today 2>&1)
# On this path there is no javac, and nothing else: the sentence has to come before any other program is needed.
holds 'without a JDK, ./eggwright says how to get one, as pom.xml words it' "$sentence" "$said"

old_jdk=
for folder in /usr/lib/jvm/* /opt/*; do
    if eggwright_jdk_version "$folder" && [ "${_version%%[!0-9]*}" -ge 9 ] && [ "${_version%%[!0-9]*}" -lt "$EGGWRIGHT_JDK_OLDEST" ]; then
        old_jdk=$folder
    fi
done
flat() { tr -s ' \n' '  ' < "$1"; }
if [ -n "$old_jdk" ]; then
    JAVA_HOME=$old_jdk mvn -B -Dstyle.color=never -N validate > "$scratch/old.log" 2>&1 < /dev/null
    if [ $? -ne 0 ] && flat "$scratch/old.log" | grep -qF "$sentence"; then
        passed 'a plain mvn on too old a JDK fails with the same sentence'
    else
        failed 'a plain mvn on too old a JDK fails with the same sentence'
        tail -n 20 "$scratch/old.log"
    fi
else
    say 'left out: no JDK older than 21 is here to try a plain mvn on'
fi

mvn -B -Dstyle.color=never -f build/planted/impure-core/pom.xml validate > "$scratch/planted.log" 2>&1 < /dev/null
if [ $? -ne 0 ] && grep -qF 'A core room may use only other core rooms' "$scratch/planted.log"; then
    passed 'a core room that wants a database is refused (planted)'
else
    failed 'a core room that wants a database is refused (planted)'
    tail -n 20 "$scratch/planted.log"
fi

if [ $quick = no ]; then
    # A folder with a space in it and another current folder: the link is followed to the checkout.
    mkdir -p "$scratch/a farm"
    ln -s "$here/eggwright" "$scratch/a farm/eggwright"
    answer=$(cd "$scratch/a farm" && ./eggwright calc interval --successes 51 --trials 54 --json 2> "$scratch/smoke.err")
    status=$?
    case $status:$answer in
        0:'{"estimate":0.94444'*) passed './eggwright answers, through a link in a folder with a space' ;;
        *) failed "./eggwright answers: status $status, \"$answer\""; cat "$scratch/smoke.err" ;;
    esac
    ./eggwright calc interval --successes 55 --trials 54 > /dev/null 2> "$scratch/smoke.err"
    holds './eggwright passes the exit status on' 2 $?
fi
