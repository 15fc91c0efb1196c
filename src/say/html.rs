//! Pages of HTML: self-contained, nothing fetched, no script; every text of a sheet is escaped.

use alloc::format;
use alloc::string::{String, ToString};

use alloc::vec::Vec;

use super::bench::{Bench, Job};
use super::drawing::Picture;
use crate::evidence::escaped;
use crate::plan::{PlaceReport, Plan};

/// How both pages look on paper and on a screen, without a colour that carries meaning.
const STYLE: &str = "\
@page{size:A4;margin:11mm 12mm}\
*{box-sizing:border-box}\
body{font:8.2pt/1.22 sans-serif;color:#000;background:#fff;margin:0 auto;max-width:186mm}\
@media screen{body{padding:8mm;font-size:11pt}}\
h1{font-size:1.5em;margin:0 0 .2em;border-bottom:2px solid}\
h2{font-size:1.05em;margin:.7em 0 .2em;border-bottom:1px solid #888}\
h3{font-size:1em;margin:.6em 0 .1em}\
p{margin:.15em 0}\
ul{margin:.1em 0;padding-left:1.3em}\
dl{margin:.2em 0;display:grid;grid-template-columns:max-content 1fr;gap:.05em .9em}\
dt{font-weight:bold}dd{margin:0}\
.job{border-top:1px dotted #888;padding:.2em 0;overflow:hidden;break-inside:avoid}\
.job:first-of-type{border-top:0}\
.job b{font-size:1.05em}\
.box{display:inline-block;width:.85em;height:.85em;border:1.2px solid;margin:0 .4em;vertical-align:-.08em}\
.gap{display:inline-block;min-width:9em;border-bottom:1px solid}\
.no{display:inline-block;min-width:1.5em;text-align:right;font-weight:bold}\
.pic{float:right;width:44mm;max-height:41mm;margin:0 0 0 3mm;overflow:hidden}\
.pic svg{width:100%;height:auto;display:block}\
.small{font-size:.92em}\
table{border-collapse:collapse;width:100%;margin:.3em 0}td,th{border:1px solid #888;padding:.15em .4em;text-align:left;vertical-align:top}\
.why{break-before:page}\
figure{margin:.4em 0;break-inside:avoid}figure img{max-width:100%;max-height:90mm}";

/// A whole page around its body.
pub(super) fn document(title: &str, body: &str) -> String {
    format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\"/>\n\
         <meta name=\"viewport\" content=\"width=device-width\"/>\n<title>{}</title>\n<style>{STYLE}</style>\n</head>\n\
         <body>\n{body}</body>\n</html>\n",
        escaped(title)
    )
}

/// An element with escaped text.
pub(super) fn tag(out: &mut String, name: &str, text: &str) {
    out.push_str(&format!("<{name}>{}</{name}>\n", escaped(text)));
}

/// The bench page as one page of paper, each face that is cut beside its step; the reasons and sources on pages behind it.
///
/// ```
/// use framegauge::{plan::{FrameSheet, prepare}, say};
/// let plan = prepare(&FrameSheet { frame: "<no. 4>".into(), ..FrameSheet::default() });
/// assert!(say::page(&plan, &[]).contains("<h1>&lt;no. 4&gt;</h1>"));
/// ```
#[must_use]
pub fn page(plan: &Plan, pictures: &[Picture]) -> String {
    let bench = Bench::of(plan);
    let mut out = String::from("<main>\n");
    tag(&mut out, "h1", &bench.title);
    if !bench.about.is_empty() {
        tag(&mut out, "p", &bench.about);
    }
    list(&mut out, bench.heads.iter().map(|(l, t)| (*l, t.as_str())));
    if !bench.questions.is_empty() {
        tag(&mut out, "h2", "First measure or ask");
    }
    for (tool, blanks) in &bench.questions {
        tag(&mut out, "h3", tool);
        for blank in blanks {
            out.push_str(&format!(
                "<p class=\"job\"><span class=\"no\">Q{}</span><span class=\"box\"></span>{} <span class=\"gap\"></span> \
                 <span class=\"small\">({})</span></p>\n",
                blank.number,
                escaped(&blank.words),
                escaped(&blank.field)
            ));
        }
    }
    if !bench.steps.is_empty() {
        tag(&mut out, "h2", "Work, in this order");
    }
    for job in &bench.steps {
        self::job(&mut out, job, pictures);
    }
    if let Some(words) = bench.no_step {
        tag(&mut out, "p", words);
    }
    if !bench.ways.is_empty() {
        tag(&mut out, "h2", "How");
        list(&mut out, bench.ways.iter().map(|(l, t)| (*l, t.as_str())));
    }
    if !bench.stays.is_empty() {
        tag(&mut out, "h2", "Nothing to do, or not here");
        items(&mut out, bench.stays.iter().map(String::as_str));
    }
    tag(&mut out, "h2", "For the customer");
    tag(&mut out, "p", &bench.customer);
    out.push_str("</main>\n");
    reasons(&mut out, plan);
    document(&plan.frame, &out)
}

fn job(out: &mut String, job: &Job, pictures: &[Picture]) {
    out.push_str("<div class=\"job\">");
    if let Some(picture) = pictures.iter().find(|p| p.place == job.place) {
        out.push_str(&format!("<div class=\"pic\">{}</div>", picture.svg));
    }
    out.push_str(&format!(
        "<span class=\"no\">{}</span><span class=\"box\"></span><b>{}</b>\n",
        job.number,
        escaped(&job.title)
    ));
    let mut parts: Vec<String> = job.parts.iter().map(|part| escaped(part)).collect();
    parts.extend(job.after.map(|after| {
        let boxes = escaped(after).replace("[ ]", "<span class=\"box\"></span>");
        boxes.replace("________", "<span class=\"gap\"></span>")
    }));
    if !parts.is_empty() {
        out.push_str(&format!("<p>{}</p>\n", parts.join(" | ")));
    }
    for note in &job.notes {
        tag(out, "p", &format!("note: {note}"));
    }
    if !job.own.is_empty() {
        tag(out, "p", &job.own);
    }
    out.push_str("</div>\n");
}

/// Labels and their texts.
fn list<'a>(out: &mut String, rows: impl Iterator<Item = (&'a str, &'a str)>) {
    out.push_str("<dl>\n");
    for (label, text) in rows {
        out.push_str(&format!(
            "<dt>{}</dt><dd>{}</dd>\n",
            escaped(label),
            escaped(text)
        ));
    }
    out.push_str("</dl>\n");
}

/// Texts behind points.
pub(super) fn items<'a>(out: &mut String, texts: impl Iterator<Item = &'a str>) {
    out.push_str("<ul>\n");
    texts.for_each(|text| tag(out, "li", text));
    out.push_str("</ul>\n");
}

/// Why, and where it was read: every place with what was found, the figures to check, the cautions.
fn reasons(out: &mut String, plan: &Plan) {
    out.push_str("<section class=\"why\">\n");
    tag(out, "h1", "Why");
    for step in &plan.steps {
        tag(out, "h3", &format!("{}. {}", step.number, step.words()));
        tag(out, "p", &step.why());
        items(
            out,
            step.stops
                .iter()
                .map(super::plan::stop)
                .collect::<Vec<_>>()
                .iter()
                .map(String::as_str),
        );
    }
    for report in &plan.places {
        place(out, report);
    }
    if !plan.weak_figures.is_empty() {
        tag(out, "h2", "Check these figures before you rely on them");
        for weak in &plan.weak_figures {
            tag(out, "p", &format!("{weak}: {}", weak.grade.words()));
        }
    }
    tag(out, "h2", "Cautions");
    items(out, plan.cautions.iter().map(|c| c.words()));
    out.push_str("</section>\n");
}

fn place(out: &mut String, report: &PlaceReport) {
    tag(
        out,
        "h3",
        &format!("{}: {}", report.name, super::plan::state(report.state)),
    );
    for finding in &report.facts {
        let sources: Vec<String> = finding.sources.iter().map(ToString::to_string).collect();
        let mut words = format!("{}: {finding}", finding.what());
        if let Some(grade) = finding.grade {
            words.push_str(&format!(" [{}]", grade.words()));
        }
        if !sources.is_empty() {
            words.push_str(&format!(" ({})", sources.join("; ")));
        }
        tag(out, "p", &words);
    }
    let told = report
        .contradictions
        .iter()
        .chain(&report.leave)
        .chain(&report.cures);
    told.for_each(|fact| tag(out, "p", &fact.to_string()));
}
