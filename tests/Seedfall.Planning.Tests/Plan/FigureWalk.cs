using System.Collections;
using System.Reflection;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Tests.Plan;

/// <summary>Every figure anywhere in a record, found by walking its properties.</summary>
internal static class FigureWalk
{
    internal static IEnumerable<Figure> In(object? value) => value switch
    {
        null or string => [],
        Figure figure => [figure],
        IEnumerable items => items.Cast<object?>().SelectMany(In),
        _ when value.GetType().Namespace?.StartsWith("Seedfall", StringComparison.Ordinal) == true && value.GetType().IsClass => value.GetType()
            .GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0)
            .SelectMany(p => In(p.GetValue(value))),
        _ => [],
    };
}
