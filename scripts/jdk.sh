# Finds a JDK 25 and puts its folder into JDK_HOME. Sourced by the commands of this folder's parent.
# Versions are read from each JDK's own `release` file: starting a JVM to ask would cost more than
# everything else.

jdk_is_25() {
    [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] && grep -q '^JAVA_VERSION="25[".]' "$1/release" 2>/dev/null
}

find_jdk() {
    local candidate java
    local candidates=()
    [ -n "${JAVA_HOME:-}" ] && candidates+=("$JAVA_HOME")
    candidates+=(
        /usr/lib/jvm/*25*
        "$HOME"/.sdkman/candidates/java/25*
        "$HOME"/.jdks/*25*
        "$HOME"/Library/Java/JavaVirtualMachines/*25*/Contents/Home
        /Library/Java/JavaVirtualMachines/*25*/Contents/Home
        /opt/*jdk*25* /opt/java/*25* /opt/homebrew/opt/openjdk@25/libexec/openjdk.jdk/Contents/Home
    )
    if java=$(command -v java); then
        # /usr/bin/java is mostly a chain of links into the JDK's bin.
        while [ -L "$java" ]; do
            case $(readlink "$java") in
                /*) java=$(readlink "$java") ;;
                *) java=$(dirname "$java")/$(readlink "$java") ;;
            esac
        done
        candidates+=("$(cd "$(dirname "$java")/.." && pwd)")
    fi
    for candidate in "${candidates[@]}"; do
        if jdk_is_25 "$candidate"; then
            JDK_HOME=$candidate
            return 0
        fi
    done
    if [ -x /usr/libexec/java_home ] && candidate=$(/usr/libexec/java_home -v 25 2>/dev/null) && jdk_is_25 "$candidate"; then
        JDK_HOME=$candidate
        return 0
    fi
    echo "Clutchwright needs a JDK 25: install one (such as Eclipse Temurin 25 from adoptium.net) or set JAVA_HOME to it." >&2
    return 1
}

# Puts the Maven command into MAVEN: one that is installed, else the wrapper, which fetches it once.
find_maven() {
    if command -v mvn > /dev/null; then
        MAVEN=mvn
    elif [ -x ./mvnw ] && { command -v curl > /dev/null || command -v wget > /dev/null; }; then
        MAVEN=./mvnw
    else
        echo "Clutchwright is built by Maven: install maven (3.9 or later), or curl, with which ./mvnw fetches it." >&2
        return 1
    fi
}
