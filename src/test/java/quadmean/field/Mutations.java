package quadmean.field;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Damage to a tally as hands, programs and disks do it; the seed decides which. */
public final class Mutations {
    private static final String[] NUMBERS = {
        "NaN", "-1", "1e9", "999999999999999", "0", "", "-0", "Infinity", "0x1F", "1,5", "12 cm", "٣", "0.0000001", "*"
    };
    private static final String[] SIGNS = {
        "\"", "\"\"", ",", ",,", ";", "\n", "\r", "\t", "\u0000", "\uFEFF", "\u2028", "'", "é", "\uD83C\uDF32", " "
    };
    private static final Charset[] CHARSETS = {
        StandardCharsets.ISO_8859_1,
        StandardCharsets.UTF_16,
        StandardCharsets.UTF_16LE,
        StandardCharsets.US_ASCII,
        Charset.forName("windows-1252"),
        Charset.forName("UTF-32"),
        Charset.forName("IBM850")
    };

    private static final String[] CELLS = {
        "<f>A1*2</f><v>12</v>",
        "<f>A1*2</f>",
        "<f>NOW()</f><v></v>",
        "<v>1E+300</v>",
        "<v>NaN</v>",
        "<v>-1</v>",
        "<v>1E-9</v>",
        "</c><c t='e'><v>#DIV/0!</v>",
        "</c><c t='b'><v>1</v>",
        "</c><c s='1'><v>46244</v>",
        "</c><c s='1'><v>1E9</v>",
        "</c><c t='s'><v>3</v>",
        "</c><c r='A1'><v>3</v>",
        "</c><c r='XFE1'><v>3</v>",
        "</c></row><row r='7'><c><v>1</v>",
        "<v>&amp;&lt;</v>",
        "<v>&#0;</v>",
        "<v><v>1</v></v>",
        "<is><t>x</t></is>",
        ""
    };

    private final Random random;

    public Mutations(long seed) {
        this.random = new Random(seed);
    }

    /** One to six hurts, and now and then another encoding. */
    public byte[] mutate(String tally) {
        String text = tally;
        int hurts = 1 + random.nextInt(6);
        for (int i = 0; i < hurts; i++) {
            text = hurt(text);
        }
        Charset charset = random.nextInt(25) == 0 ? CHARSETS[random.nextInt(CHARSETS.length)] : StandardCharsets.UTF_8;
        byte[] bytes = text.getBytes(charset);
        if (bytes.length > 0 && random.nextInt(25) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    /** A workbook of the tally: hurt as text before it is packed, or its bytes after, or both. */
    byte[] mutateWorkbook(String tally) {
        int kind = random.nextInt(4);
        String text = kind == 0 ? tally : hurt(tally);
        if (random.nextInt(4) == 0) {
            text = lines(text, this::swapHeaders);
        }
        String sheet = Workbooks.sheet(text.replaceAll("[\\p{Cntrl}&&[^\n]]", "?"));
        if (random.nextInt(3) == 0) {
            sheet = hurtCells(sheet);
        }
        byte[] bytes = Workbooks.of(java.util.Map.of("Trees", sheet));
        return kind == 1 ? bytes : hurtBytes(bytes);
    }

    /** Cells as spreadsheets make them: formulas with and without values, dates, errors, places out of order. */
    private String hurtCells(String sheet) {
        String cell = CELLS[random.nextInt(CELLS.length)];
        int at = sheet.indexOf("<v>", random.nextInt(sheet.length()));
        int end = sheet.indexOf("</v>", Math.max(at, 0));
        return at < 0 || end < 0 ? sheet : sheet.substring(0, at) + cell + sheet.substring(end + 4);
    }

    private byte[] hurtBytes(byte[] bytes) {
        byte[] hurt = random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length + 1)) : bytes.clone();
        int flips = random.nextInt(4);
        for (int i = 0; i < flips && hurt.length > 0; i++) {
            hurt[random.nextInt(hurt.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return hurt;
    }

    private void swapHeaders(List<String> lines, int at) {
        swapColumns(lines, 0);
    }

    private String hurt(String text) {
        return switch (random.nextInt(9)) {
            case 0 -> text.substring(0, random.nextInt(text.length() + 1));
            case 1 -> lines(text, this::cut);
            case 2 -> lines(text, this::copy);
            case 3 -> lines(text, this::swapColumns);
            case 4 -> lines(text, this::otherNumber);
            case 5, 6 -> insert(text, SIGNS[random.nextInt(SIGNS.length)]);
            case 7 -> delete(text, 1 + random.nextInt(5));
            default -> text.replace(text.contains("\r\n") ? "\r\n" : "\n", random.nextBoolean() ? "\r\n" : "\n\n");
        };
    }

    private interface LineHurt {
        void apply(List<String> lines, int at);
    }

    private String lines(String text, LineHurt hurt) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        hurt.apply(lines, random.nextInt(lines.size()));
        return String.join("\n", lines);
    }

    private void cut(List<String> lines, int at) {
        String line = lines.get(at);
        lines.set(at, line.substring(0, random.nextInt(line.length() + 1)));
    }

    private void copy(List<String> lines, int at) {
        lines.add(random.nextInt(lines.size() + 1), lines.get(at));
    }

    private void swapColumns(List<String> lines, int at) {
        List<String> cells = Arrays.asList(lines.get(at).split(",", -1));
        Collections.swap(cells, random.nextInt(cells.size()), random.nextInt(cells.size()));
        lines.set(at, String.join(",", cells));
    }

    private void otherNumber(List<String> lines, int at) {
        String[] cells = lines.get(at).split(",", -1);
        cells[random.nextInt(cells.length)] = NUMBERS[random.nextInt(NUMBERS.length)];
        lines.set(at, String.join(",", cells));
    }

    private String insert(String text, String sign) {
        int at = random.nextInt(text.length() + 1);
        return text.substring(0, at) + sign + text.substring(at);
    }

    private String delete(String text, int length) {
        int from = random.nextInt(text.length() + 1);
        return text.substring(0, from) + text.substring(Math.min(text.length(), from + length));
    }
}
