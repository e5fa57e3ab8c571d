using System.Text;

namespace Seedfall.Exchange.Calendar;

/// <summary>Content lines of RFC 5545 section 3.1: CRLF ends, folded so that no line exceeds 75 octets, never inside a character.</summary>
internal static class Folding
{
    private const int MostOctets = 75;

    /// <summary>Unfolds whatever folding the text has and folds it by octets.</summary>
    internal static string Fold(string text)
    {
        var unfolded = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace("\n ", "", StringComparison.Ordinal).Replace("\n\t", "", StringComparison.Ordinal);
        var folded = new StringBuilder(text.Length + (text.Length / 32));
        foreach (var line in unfolded.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Append(folded, line);
            folded.Append("\r\n");
        }

        return folded.ToString();
    }

    private static void Append(StringBuilder folded, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                folded.Append("\r\n ");
                octets = 1;
            }

            folded.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }
    }
}
