package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuoteWatchTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "`a,b`, false",
                "`a,\"b\"`, false",
                "`a,\"b`, true",
                "`\"a\"\"`, true",
                "`\"a\"\"\"`, false",
                "`a\"b,c`, false",
                "`\"\"`, false",
                "`\"a\n\"`, false",
                "`a\n\"b`, true",
                "`a;\"b`, false"
            })
    void knowsWhetherATextEndsInsideQuotes(String csv, boolean open) throws IOException {
        QuoteWatch whole = new QuoteWatch(new StringReader(csv), ',');
        char[] buffer = new char[100];
        assertEquals(csv.length(), whole.read(buffer, 0, 100));
        assertEquals(open, whole.isOpen());
        QuoteWatch single = new QuoteWatch(new StringReader(csv), ',');
        int read = 0;
        while (single.read() >= 0) {
            read++;
        }
        assertEquals(csv.length(), read);
        assertEquals(open, single.isOpen());
    }
}
