namespace Seedfall.Weather;

/// <summary>One file to read: its name for messages, its size for the progress, and how to open it.</summary>
/// <param name="Name">Shown in reports and problems; no path is needed.</param>
/// <param name="Bytes">Size before unpacking; 0 where unknown.</param>
/// <param name="Open">Opens the content; read once, forward only, then disposed.</param>
public sealed record WeatherInput(string Name, long Bytes, Func<Stream> Open);
