namespace Seedfall.Exchange.Ground;

/// <summary>Ends the reading of a file at its first fault; never leaves <see cref="OutlineFiles"/>.</summary>
internal sealed class RefusedException(Spot at, string expected, string found) : Exception(found)
{
    internal Spot At => at;

    internal string Expected => expected;
}

/// <summary>A place in a file: line and column from 1, zero where the format has none.</summary>
internal readonly record struct Spot(int Line, int Column);
