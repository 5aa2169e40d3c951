using System.CommandLine;
using System.Text;
using Advance.Cli.Output;
using Advance.Domain.Findings;
using Advance.Planning;

namespace Advance.Cli.Commands;

/// <summary><c>advance rules [NAME]</c></summary>
internal static class RulesCommand
{
    public static Command Make(Terminal terminal)
    {
        var name = new Argument<string?>("NAME") { Description = "One rule, to have it explained.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("rules", "Lists the rules that a plan is judged by, or explains one.") { name };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(name) is not { } wanted)
            {
                terminal.Say(List());
                return ExitCode.Done;
            }

            if (RuleBook.Rules.FirstOrDefault(rule => rule.Name == wanted) is not { } rule)
            {
                terminal.Complain([$"There is no rule {wanted}."], "advance rules lists them all.");
                return ExitCode.BrokenInput;
            }

            terminal.Say(Explain(rule));
            return ExitCode.Done;
        });
        return command;
    }

    private static string List()
    {
        var width = RuleBook.Rules.Max(rule => rule.Name.Length);
        return string.Join("\n", RuleBook.Rules.Select(rule => $"{rule.Name.PadRight(width)}  {rule.Severity.Word(),-7}  {rule.Catches}"));
    }

    private static string Explain(Rule rule)
    {
        var text = new StringBuilder();
        text.Append($"{rule.Name} ({rule.Severity.Word()})\n");
        text.Append($"  catches  {rule.Catches}\n");
        text.Append($"  why      {rule.Why}\n");
        text.Append($"  cures    {rule.Cures}\n");
        text.Append($"  source   {rule.Source}\n");
        text.Append($"  unknown  what cannot be judged is a {(rule.LifeOrFuse ? "stop" : "concern")}");
        return text.ToString();
    }
}
