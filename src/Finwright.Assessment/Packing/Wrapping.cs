using System.Text;

namespace Finwright.Assessment.Packing;

/// <summary>Breaks texts at blanks, so that they read well in a narrow window.</summary>
public static class Wrapping
{
    /// <summary>Wraps a text.</summary>
    /// <param name="text">The text; a line feed starts a new line.</param>
    /// <param name="width">Columns in all.</param>
    /// <param name="indent">Blanks before every line but the first.</param>
    /// <param name="column">Columns already used on the first line.</param>
    /// <returns>The wrapped text, without a line feed at the end.</returns>
    public static string Wrap(string text, int width, int indent = 0, int column = 0)
    {
        StringBuilder wrapped = new();
        bool first = true;
        foreach (string paragraph in text.Split('\n'))
        {
            if (!first)
                StartLine();
            first = false;
            bool atStart = true;
            foreach (string word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                // A word longer than a line (a path, say) is left whole, so that it can be copied.
                if (!atStart && column + 1 + word.Length > width)
                {
                    StartLine();
                    atStart = true;
                }

                if (!atStart)
                {
                    wrapped.Append(' ');
                    column++;
                }

                wrapped.Append(word);
                column += word.Length;
                atStart = false;
            }
        }

        return wrapped.ToString();

        void StartLine()
        {
            wrapped.Append('\n').Append(' ', indent);
            column = indent;
        }
    }
}
