using System.Text;
using Boardwright.Quantities;

namespace Boardwright.Yard.Commands;

/// <summary>Splits a line into words as a shell does: blanks part words, quotes keep them together, a backslash keeps the next character.</summary>
public static class ShellWords
{
    public static Outcome<IReadOnlyList<string>> Split(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var words = new List<string>();
        var word = new StringBuilder();
        var inWord = false;
        var quote = '\0';
        for (var index = 0; index < line.Length; index++)
        {
            var c = line[index];
            if (quote != '\0' && c == quote)
            {
                quote = '\0';
            }
            else if (c == '\\' && quote != '\'' && index + 1 < line.Length)
            {
                word.Append(line[++index]);
                inWord = true;
            }
            else if (quote != '\0')
            {
                word.Append(c);
            }
            else if (c is '"' or '\'')
            {
                quote = c;
                inWord = true;
            }
            else if (char.IsWhiteSpace(c))
            {
                Close();
            }
            else
            {
                word.Append(c);
                inWord = true;
            }
        }

        Close();
        return quote == '\0' ? words : new Refusal("line", line, $"a closing {quote}");

        void Close()
        {
            if (inWord)
            {
                words.Add(word.ToString());
                word.Clear();
                inWord = false;
            }
        }
    }
}
