//! One question a line in, one answer a line out.
//!
//! `echo '{"id":1,"ask":"thread_limits","thread":"M10x1-6H"}' | ask`
//! `ask --schema` prints the JSON Schema of questions and answers; `--rows FILE` adds a shop's own rows (TOML or JSON);
//! `--jobs N` answers on N threads, in the same order and with the same bytes.
//! Exit 0: every line was answered; 1: a line gave an error; 2: the lines or the rows could not be read.

#![allow(clippy::indexing_slicing)]

#[path = "support/rows.rs"]
mod rows;

use std::io::{BufRead, BufReader, BufWriter, Read, Write};
use std::process::ExitCode;
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};

use framegauge::ask::{Context, LONGEST_LINE, answer_line, schema};
use framegauge::standard::ShopRows;
use framegauge::{Error, ErrorKind};

/// Lines that travel together: enough that handing them over costs nothing, few enough that a hand-typed line is answered
/// at once.
const BATCH: usize = 256;
/// Batches that may wait at each thread: what bounds the memory.
const WAITING: usize = 2;

struct Options {
    rows: Option<String>,
    jobs: usize,
    schema: bool,
}

fn options() -> Result<Options, Error> {
    let mut found = Options {
        rows: None,
        jobs: 1,
        schema: false,
    };
    let mut words = std::env::args().skip(1);
    while let Some(word) = words.next() {
        let mut value = |example: &str| {
            words.next().ok_or_else(|| {
                Error::new(
                    ErrorKind::Missing,
                    word.clone(),
                    "",
                    "a value is missing",
                    format!("write `{example}`"),
                )
            })
        };
        match word.as_str() {
            "--schema" => found.schema = true,
            "--rows" => found.rows = Some(value("--rows own.toml")?),
            "--jobs" => {
                let text = value("--jobs 4")?;
                found.jobs = text
                    .parse()
                    .ok()
                    .filter(|n| (1..=256).contains(n))
                    .ok_or_else(|| {
                        Error::new(
                            ErrorKind::OutOfRange,
                            "--jobs",
                            text,
                            "no number of threads",
                            "1 to 256",
                        )
                    })?;
            }
            _ => {
                return Err(Error::new(
                    ErrorKind::UnknownField,
                    word.clone(),
                    "",
                    "no such option",
                    "known: --schema, --rows FILE, --jobs N",
                ));
            }
        }
    }
    Ok(found)
}

fn main() -> ExitCode {
    match run() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::from(1),
        Err(error) => {
            eprintln!("{error}");
            ExitCode::from(2)
        }
    }
}

/// Whether every line was answered.
fn run() -> Result<bool, Error> {
    let options = options()?;
    let out = BufWriter::with_capacity(1 << 16, std::io::stdout());
    if options.schema {
        let mut out = out;
        serde_json::to_writer_pretty(&mut out, &schema())
            .map_err(std::io::Error::from)
            .and_then(|()| writeln!(out))
            .and_then(|()| out.flush())
            .map_err(|e| pipe(&e, "standard output"))?;
        return Ok(true);
    }
    let own = options
        .rows
        .as_deref()
        .map(rows::read)
        .transpose()?
        .unwrap_or_else(ShopRows::default);
    let context = Context::with_rows(&own)?;
    let input = BufReader::with_capacity(1 << 16, std::io::stdin().lock());
    if options.jobs == 1 {
        one_by_one(input, out, &context)
    } else {
        on_threads(input, out, &context, options.jobs)
    }
}

fn pipe(error: &std::io::Error, which: &'static str) -> Error {
    Error::new(
        ErrorKind::Missing,
        which,
        "",
        error.to_string(),
        "check the pipe",
    )
}

/// Reads one line without its break; of a line that is too long it keeps just enough to be refused. `false` at the end of the
/// input.
fn next_line(input: &mut impl BufRead, line: &mut Vec<u8>) -> Result<bool, Error> {
    line.clear();
    let mut any = false;
    loop {
        let buffer = input.fill_buf().map_err(|e| pipe(&e, "standard input"))?;
        if buffer.is_empty() {
            break;
        }
        any = true;
        let (piece, ended) = match buffer.iter().position(|b| *b == b'\n') {
            Some(at) => (&buffer[..at], true),
            None => (buffer, false),
        };
        let room = (LONGEST_LINE + 1).saturating_sub(line.len());
        line.extend_from_slice(&piece[..piece.len().min(room)]);
        let used = piece.len() + usize::from(ended);
        input.consume(used);
        if ended {
            break;
        }
    }
    if line.last() == Some(&b'\r') {
        line.pop();
    }
    Ok(any)
}

fn one_by_one(
    mut input: BufReader<impl Read>,
    mut out: impl Write,
    context: &Context<'_>,
) -> Result<bool, Error> {
    let (mut line, mut all) = (Vec::new(), true);
    while next_line(&mut input, &mut line)? {
        let reply = answer_line(&line, context);
        all &= reply.answered;
        let mut told = out
            .write_all(reply.json.as_bytes())
            .and_then(|()| out.write_all(b"\n"));
        // Whoever types a line gets its answer at once; from a full pipe answers go out in large pieces.
        if input.buffer().is_empty() {
            told = told.and_then(|()| out.flush());
        }
        told.map_err(|e| pipe(&e, "standard output"))?;
    }
    out.flush().map_err(|e| pipe(&e, "standard output"))?;
    Ok(all)
}

type Lines = Vec<Vec<u8>>;
type Replies = (String, bool);

/// Deals batches of lines to threads in turn; a writer gathers the answers in the same turn, so that the order is kept. Every
/// channel is bounded, so no more than a few batches a thread are ever held.
fn on_threads(
    mut input: BufReader<impl Read>,
    out: impl Write + Send,
    context: &Context<'_>,
    jobs: usize,
) -> Result<bool, Error> {
    std::thread::scope(|scope| {
        let mut to: Vec<SyncSender<Lines>> = Vec::new();
        let mut from: Vec<Receiver<Replies>> = Vec::new();
        for _ in 0..jobs {
            let (give, take) = sync_channel::<Lines>(WAITING);
            let (tell, hear) = sync_channel::<Replies>(WAITING);
            scope.spawn(move || {
                while let Ok(lines) = take.recv() {
                    if tell.send(answers(&lines, context)).is_err() {
                        return;
                    }
                }
            });
            to.push(give);
            from.push(hear);
        }
        let writer = scope.spawn(move || gather(&from, out));
        let dealt = deal(&mut input, &to);
        drop(to);
        let written = writer.join().unwrap_or_else(|_| {
            Err(Error::new(
                ErrorKind::Missing,
                "--jobs",
                "",
                "a thread ended early",
                "ask again with `--jobs 1`",
            ))
        })?;
        dealt.map(|()| written)
    })
}

fn answers(lines: &Lines, context: &Context<'_>) -> Replies {
    let (mut text, mut all) = (String::new(), true);
    for line in lines {
        let reply = answer_line(line, context);
        all &= reply.answered;
        text.push_str(&reply.json);
        text.push('\n');
    }
    (text, all)
}

fn deal(input: &mut BufReader<impl Read>, to: &[SyncSender<Lines>]) -> Result<(), Error> {
    for give in to.iter().cycle() {
        let mut batch = Lines::with_capacity(BATCH);
        let (mut bytes, mut ended) = (0, false);
        // A batch is a number of lines or a megabyte, or what has come so far.
        while batch.len() < BATCH && bytes < LONGEST_LINE {
            let mut line = Vec::new();
            if !next_line(input, &mut line)? {
                ended = true;
                break;
            }
            bytes += line.len();
            batch.push(line);
            if input.buffer().is_empty() {
                break;
            }
        }
        // A closed channel means that the writer has failed; it tells why.
        if (!batch.is_empty() && give.send(batch).is_err()) || ended {
            break;
        }
    }
    Ok(())
}

fn gather(from: &[Receiver<Replies>], mut out: impl Write) -> Result<bool, Error> {
    let mut all = true;
    for hear in from.iter().cycle() {
        let Ok((text, answered)) = hear.recv() else {
            break;
        };
        all &= answered;
        out.write_all(text.as_bytes())
            .and_then(|()| out.flush())
            .map_err(|e| pipe(&e, "standard output"))?;
    }
    Ok(all)
}
