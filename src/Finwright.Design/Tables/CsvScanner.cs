using System.Text;

namespace Finwright.Design.Tables;

/// <summary>Cuts the text of a table into lines and cells.</summary>
internal sealed class CsvScanner(string text)
{
    private int _at;
    private int _next = 1;

    /// <summary>Line on which the present row begins, from 1.</summary>
    public int Line { get; private set; }

    /// <summary>Goes to the next line that is neither empty nor a comment.</summary>
    /// <returns>Whether there is one.</returns>
    public bool NextLine()
    {
        while (_at < text.Length)
        {
            int start = _at;
            while (start < text.Length && text[start] is not ('\n' or '\r') && char.IsWhiteSpace(text[start]))
                start++;
            Line = _next;
            if (start < text.Length && text[start] is not ('\n' or '\r' or '#'))
                return true;
            EndLine();
        }

        return false;
    }

    /// <summary>What separates the cells of the present line: a semicolon, a tab, else a comma.</summary>
    public char Separator()
    {
        int end = text.AsSpan(_at).IndexOfAny('\n', '\r');
        ReadOnlySpan<char> line = end < 0 ? text.AsSpan(_at) : text.AsSpan(_at, end);
        return line.Contains(';') ? ';' : line.Contains('\t') ? '\t' : ',';
    }

    /// <summary>Cells of the present row, which may reach over several lines where a cell is in quotes.</summary>
    /// <param name="separator">What stands between them.</param>
    /// <param name="longest">Most characters of a cell.</param>
    /// <param name="say">Is told what is wrong: code, message, remedy.</param>
    /// <returns>The cells; null when the row is wrong.</returns>
    public List<string>? Cells(char separator, int longest, Action<string, string, string> say)
    {
        List<string> cells = [];
        while (true)
        {
            while (_at < text.Length && text[_at] == ' ')
                _at++;
            bool isQuoted = _at < text.Length && text[_at] == '"';
            string? quoted = isQuoted ? Quoted() : null;
            if (isQuoted && quoted is null)
            {
                say("open-quote", $"The quote in cell {cells.Count + 1} does not end.", "End it, or take the quotes away.");
                return null;
            }

            int end = EndOfCell(separator);
            string plain = text[_at..end].Trim();
            _at = end;
            if (isQuoted && plain.Length > 0)
            {
                say("after-quote", $"Behind the quote in cell {cells.Count + 1} something else follows.", "Put the whole cell into quotes.");
                EndLine();
                return null;
            }

            string cell = quoted ?? plain;
            if (cell.Length > longest)
            {
                say("too-long", $"Cell {cells.Count + 1} has {cell.Length} characters; {longest} are the most.", "Shorten it.");
                EndLine();
                return null;
            }

            cells.Add(cell);
            if (_at >= text.Length || text[_at] != separator)
            {
                EndLine();
                return cells;
            }

            _at++;
        }
    }

    private int EndOfCell(char separator)
    {
        int end = text.AsSpan(_at).IndexOfAny(separator, '\n', '\r');
        return end < 0 ? text.Length : _at + end;
    }

    // From the quote that begins it to the one that ends it; null when none does.
    private string? Quoted()
    {
        StringBuilder quoted = new();
        for (_at++; _at < text.Length; _at++)
        {
            if (text[_at] == '"')
            {
                if (_at + 1 >= text.Length || text[_at + 1] != '"')
                {
                    _at++;
                    return quoted.ToString();
                }

                _at++;
            }
            else if (text[_at] == '\n' || (text[_at] == '\r' && (_at + 1 >= text.Length || text[_at + 1] != '\n')))
            {
                _next++;
            }

            quoted.Append(text[_at]);
        }

        return null;
    }

    private void EndLine()
    {
        int end = text.AsSpan(_at).IndexOfAny('\n', '\r');
        _at = end < 0 ? text.Length : _at + end + (text.AsSpan(_at + end).StartsWith("\r\n") ? 2 : 1);
        _next++;
    }
}
