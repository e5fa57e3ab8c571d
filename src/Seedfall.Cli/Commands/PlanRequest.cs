using Seedfall.Exchange.Paper;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Cli.Commands;

/// <summary>What <c>seedfall plan</c> was asked for.</summary>
internal sealed record PlanRequest(Lawn Lawn, Choices Choices, PaperSize Paper, string Folder);
