namespace Seedfall.Planning.Field;

/// <summary>Usual protective clothing, common practice, no source read. The label's list stands above it.</summary>
internal static class WhatToWear
{
    internal static IReadOnlyList<string> Machine { get; } = ["Closed shoes, eye and hearing protection."];

    internal static IReadOnlyList<string> Feeding { get; } = ["Closed shoes and gloves; eye protection in wind."];

    internal static IReadOnlyList<string> Weighing { get; } = ["While weighing: the mask or respirator the label names against dust."];

    internal static IReadOnlyList<string> Spraying { get; } =
    [
        "What the label names, all of it.",
        "Never less than long sleeves and trousers, closed shoes with socks, chemical-resistant gloves, eye protection.",
    ];
}
