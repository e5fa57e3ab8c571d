using Seedfall.Cli.Commands;
using Seedfall.Cli.Output;

return await CommandTree.Run(args, new Streams(Console.Out, Console.Error, interactive: !Console.IsErrorRedirected), TimeProvider.System);
