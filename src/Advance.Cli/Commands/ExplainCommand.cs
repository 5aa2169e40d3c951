using System.CommandLine;
using Advance.Cli.Output;
using Advance.Domain.Figures;
using Advance.Domain.Naming;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Cli.Commands;

/// <summary><c>advance explain GIG [ADDRESS]</c></summary>
internal static class ExplainCommand
{
    public static Command Make(Terminal terminal)
    {
        var gig = GigArgument.Make();
        var address = new Argument<string?>("ADDRESS") { Description = "A figure, by the address that sheets and findings print; without it all are listed.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("explain", "Shows how a figure came about: formula, inputs and where they come from, result, source.") { gig, address };
        command.SetAction(parsed => Explain(terminal, parsed.GetRequiredValue(gig), parsed.GetValue(address)));
        return command;
    }

    private static int Explain(Terminal terminal, string gig, string? wanted)
    {
        var planned = Planned.From(gig);
        if (planned.Plan is not { } plan)
        {
            terminal.Complain(["The gig cannot be read."], "advance check tells what is wrong with it.");
            return planned.ExitCode;
        }

        var speech = Speech.Of(plan.Brief.Company.Units);
        if (wanted is null)
        {
            terminal.Say(string.Join("\n", plan.Figures.Select(stated => $"{stated.Address}  {Said(stated, speech)}")));
            return ExitCode.Done;
        }

        var found = plan.Figures.FirstOrDefault(stated => stated.Address == Address.Read(wanted));
        if (found is null)
        {
            var near = Nearest.To(wanted, plan.Figures.Select(stated => stated.Address.Text));
            terminal.Complain([$"There is no figure {wanted}."], near is null ? "Without an address all are listed." : $"Did you mean {near}?");
            return ExitCode.BrokenInput;
        }

        terminal.Say($"{found.Address}: {found.What}, {Said(found, speech)}\n{Working(found)}".TrimEnd('\n'));
        return ExitCode.Done;
    }

    private static string Said(Stated stated, Speech speech) =>
        $"{(stated.Value is { } value ? speech.Say(value) : "cannot be worked out")}{(stated.RestsOn.Any ? " TBC" : "")}";

    private static string Working(Stated stated) => stated.How is { } working
        ? WorkingText.Of(working)
        : WorkingText.Of(stated.Why);
}
