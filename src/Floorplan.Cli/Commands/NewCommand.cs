using System.CommandLine;
using Floorplan.Cli.Hosting;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Files;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Templates;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Commands;

/// <summary>Starts a plan from a template; without a name it lists them.</summary>
internal static class NewCommand
{
    public static Command Build(Host host)
    {
        var template =
            new Argument<string?>("TEMPLATE")
            {
                Arity = ArgumentArity.ZeroOrOne,
                HelpName = "TEMPLATE",
                Description = "The template to start from; leave it out to list them."
            };
        template.CompletionSources.Add(_ => TemplateShelf.Names);
        var file =
            new Argument<string?>("FILE")
            {
                Arity = ArgumentArity.ZeroOrOne,
                Description = "The plan to write; - writes to standard output."
            };
        var command = new Command("new", "Start a plan from a template.") { template, file };
        command.SetAction(parsed => Run(host, parsed.GetValue(template), parsed.GetValue(file)));
        return command;
    }

    private static int Run(Host host, string? template, string? file)
    {
        if (template is null)
        {
            List(Page.OfOutput(host));
            return ExitCode.Fine;
        }

        var error = Page.OfError(host);
        if (TemplateShelf.Find(template) is not { } text)
        {
            error.Line(
                new Piece("floorplan: ", Tone.Error), $"there is no template {template}; ", NearNames.Hint(template, TemplateShelf.Names)
                    ?? "they are");
            error.Rows([.. TemplateShelf.Names.Select(n => (n, TemplateShelf.Describe(n)))]);
            return ExitCode.CouldNotRun;
        }

        if (file is null)
        {
            return Refusal.Tell(host, $"say where to write it, such as: floorplan new {template} my-unit.unit");
        }

        if (file == PlanFileReader.StandardInput)
        {
            host.Out.Write(text);
            return ExitCode.Fine;
        }

        return Write(host, template, file, text);
    }

    private static int Write(Host host, string template, string file, string text)
    {
        string full = host.Full(file);
        string? problem = Path.Exists(full)
            ? "it is there already and is left as it is; choose another name"
            : WholeFile.Create(full, text);
        if (problem is not null)
        {
            return Refusal.Tell(host, $"{file}: {problem}");
        }

        Page.OfOutput(host).Line($"wrote {file} from {template}; next: floorplan draw {file}");
        return ExitCode.Fine;
    }

    private static void List(Page page)
    {
        page.Heading("Templates");
        page.Rows([.. TemplateShelf.Names.Select(n => (n, TemplateShelf.Describe(n)))]);
        page.Gap();
        page.Line("Start one with: floorplan new TEMPLATE FILE");
    }
}
