namespace Seedfall.Cli.Output;

/// <summary>Where a command writes.</summary>
/// <param name="results">What was asked for.</param>
/// <param name="remarks">Errors and progress.</param>
/// <param name="interactive">True where somebody watches the remarks.</param>
internal sealed class Streams(TextWriter results, TextWriter remarks, bool interactive)
{
    internal TextWriter Results => results;

    internal TextWriter Remarks => remarks;

    internal bool Interactive => interactive;
}
