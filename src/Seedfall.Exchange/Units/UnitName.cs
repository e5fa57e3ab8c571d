namespace Seedfall.Exchange.Units;

/// <summary>One unit a quantity may be written in.</summary>
/// <param name="Text">The unit as written back.</param>
/// <param name="From">The quantity of a number in this unit.</param>
/// <param name="In">The number of a quantity in this unit.</param>
/// <param name="Also">Other spellings accepted.</param>
public sealed record UnitName<T>(string Text, Func<double, T> From, Func<T, double> In, params string[] Also);
