namespace Seedfall.Web.Data;

/// <summary>The app cannot start; the message is the one line the person at the terminal reads.</summary>
internal sealed class StartRefusedException(string message) : Exception(message);
