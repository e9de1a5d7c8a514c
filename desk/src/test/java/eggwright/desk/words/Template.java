package eggwright.desk.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A jte template taken apart, as far as it takes to find words written straight into it. */
final class Template {
    private static final Pattern SPOKEN =
            Pattern.compile("\\b(?:aria-label|title|placeholder|alt)=\"([^\"$]*\\p{L}[^\"$]*)\"");

    private final String text;
    private final StringBuilder shown = new StringBuilder();
    private final List<String> tags = new ArrayList<>();
    private int at;

    private Template(String text) {
        this.text = text;
    }

    /** The words that stand between tags or in attributes that are read out. */
    static List<String> bareWords(String text) {
        var template = new Template(text);
        template.content(false);
        var found = new ArrayList<String>();
        for (var piece : template.shown.toString().replaceAll("&#?\\w+;", " ").split("\\s*\\n\\s*", -1)) {
            if (piece.chars().anyMatch(Character::isLetter)) {
                found.add(piece.strip());
            }
        }
        template.tags.forEach(tag -> SPOKEN.matcher(tag).results().forEach(m -> found.add(m.group(1))));
        return found;
    }

    private void content(boolean inBackticks) {
        while (at < text.length()) {
            if (inBackticks && text.charAt(at) == '`') {
                at++;
                return;
            }
            step();
        }
    }

    private void step() {
        if (text.startsWith("<%--", at)) {
            at = text.indexOf("--%>", at) + 4;
        } else if (text.startsWith("${", at) || text.startsWith("!{", at) || text.startsWith("$unsafe{", at)) {
            at = text.indexOf('{', at);
            balanced('{', '}');
        } else if (text.startsWith("@import", at) || text.startsWith("@param", at)) {
            var end = text.indexOf('\n', at);
            at = end < 0 ? text.length() : end;
        } else if (text.charAt(at) == '@') {
            directive();
        } else if (text.charAt(at) == '<') {
            tag();
        } else {
            shown.append(text.charAt(at++));
        }
    }

    private void directive() {
        at++;
        while (at < text.length() && (Character.isJavaIdentifierPart(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '(') {
            balanced('(', ')');
        }
    }

    private void tag() {
        var from = at;
        while (text.charAt(at) != '>') {
            if (text.startsWith("${", at)) {
                at++;
                balanced('{', '}');
            } else {
                at++;
            }
        }
        at++;
        tags.add(text.substring(from, at));
        shown.append('\n');
    }

    /** Passes over code; content blocks inside it are read as content. */
    private void balanced(char open, char close) {
        var depth = 0;
        do {
            var c = text.charAt(at);
            if (text.startsWith("@`", at)) {
                at += 2;
                content(true);
                continue;
            }
            if (c == '"') {
                at++;
                while (text.charAt(at) != '"') {
                    at += text.charAt(at) == '\\' ? 2 : 1;
                }
            } else if (c == open) {
                depth++;
            } else if (c == close) {
                depth--;
            }
            at++;
        } while (depth > 0);
    }
}
