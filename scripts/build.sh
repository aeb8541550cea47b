# Builds what ./clutchwright runs: the jar laid out beside its libraries, and the cache from which
# the JVM starts without loading, linking and profiling everything anew. Sourced; needs JDK_HOME and
# the repository's folder in `here`.

BUILT=$here/.build/app

# G1, by name: the cache holds objects laid out for it, and on a small machine the JVM would choose
# otherwise. Heap that stands idle for half a minute goes back to the machine. A cache that does not
# fit, after a change of JDK say, is passed over without a word: the start is slower, that is all.
JVM_OPTIONS=(-XX:+UseG1GC -XX:G1PeriodicGCInterval=30000 -Xlog:disable -Xlog:all=error:stderr
    -Dspring.aot.enabled=true -Djava.awt.headless=true -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8)

build_is_current() {
    [ -f "$BUILT/clutchwright.jar" ] && [ -f "$BUILT/jdk" ] && [ "$(cat "$BUILT/jdk")" = "$JDK_HOME" ] || return 1
    # Folders too: their time changes when a file in them is removed.
    [ -z "$(cd "$here" && find pom.xml engine/pom.xml records/pom.xml app/pom.xml scripts/build.sh \
        engine/src/main records/src/main app/src/main -newer "$BUILT/clutchwright.jar" 2>/dev/null | head -n 1)" ]
}

build_if_needed() {
    build_is_current || build
}

build() {
    local log=$here/.build/build.log next=$here/.build/next
    cd "$here" && find_maven || return 1
    mkdir -p .build && rm -rf "$next" && mkdir "$next"
    say_progress "Building Clutchwright, which happens once after a change ..."
    if ! JAVA_HOME=$JDK_HOME "$MAVEN" -B -q -pl app -am -Dmaven.test.skip=true -Dspotless.check.skip=true package > "$log" 2>&1; then
        grep -m 20 '^\[ERROR\]' "$log" >&2 || tail -n 20 "$log" >&2
        echo "Clutchwright could not be built; all of it is in .build/build.log" >&2
        return 1
    fi
    "$JDK_HOME/bin/java" -Djarmode=tools -jar app/target/app-*-run.jar extract --destination "$next" >> "$log" 2>&1
    mv "$next"/app-*-run.jar "$next/clutchwright.jar"
    say_progress "Preparing a quick start ..."
    # The cache knows its jars by path and time, so it is made where it will be used.
    rm -rf "$BUILT" && mv "$next" "$BUILT"
    touch "$BUILT/clutchwright.jar"
    "$JDK_HOME/bin/java" "${JVM_OPTIONS[@]}" -XX:AOTCacheOutput="$BUILT/clutchwright.aot" \
        -jar "$BUILT/clutchwright.jar" rehearse "$BUILT/rehearsal" >> "$log" 2>&1 ||
        echo "The quick start could not be prepared (.build/build.log says why); starting the slow way." >&2
    rm -rf "$BUILT/rehearsal"
    printf '%s' "$JDK_HOME" > "$BUILT/jdk"
    say_progress ""
    cd - > /dev/null
}

# One line that is overwritten; nothing at all where nobody watches.
say_progress() {
    [ ! -t 2 ] || printf '\r\033[K%s' "$1" >&2
}
