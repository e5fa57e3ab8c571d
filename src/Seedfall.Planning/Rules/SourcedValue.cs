using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Rules;

/// <summary>A figure of the trade with its source and how sure it is.</summary>
/// <param name="Value">In the unit the property names.</param>
/// <param name="Source">Published source, or "common practice, no source read".</param>
/// <param name="Sureness">Published, CommonPractice or Assumed.</param>
public sealed record SourcedValue(double Value, string Source, Sureness Sureness);

/// <summary>A range of the trade with its source.</summary>
public sealed record SourcedRange(double Low, double High, string Source, Sureness Sureness)
{
    public double Middle => 0.5 * (Low + High);
}
