#include "app/document/prover.h"

#include "app/document/vector_state.h"

#include <utility>

namespace siphonwright {

Prover::Prover(QObject* parent) : QObject(parent), thread_([this](const std::stop_token& end) { work(end); })
{}

Prover::~Prover()
{
    thread_.request_stop();
    const std::lock_guard lock(mutex_);
    running_.request_stop();
}

void Prover::ask(Job job)
{
    {
        const std::lock_guard lock(mutex_);
        waiting_ = std::move(job);
        running_.request_stop();
    }
    wake_.notify_one();
}

std::optional<Prover::Answer> Prover::take()
{
    const std::lock_guard lock(mutex_);
    return std::exchange(answer_, std::nullopt);
}

void Prover::work(const std::stop_token& end)
{
    leaveVectorState();
    while (true) {
        Job job;
        std::stop_source running;
        {
            std::unique_lock lock(mutex_);
            if (!wake_.wait(lock, end, [this] { return waiting_.has_value(); }) || end.stop_requested())
                return;
            job = std::move(*waiting_);
            waiting_.reset();
            running_ = running;
        }
        ProofOptions options;
        options.bands = true;
        options.powers = true;
        options.so_far = [&](const Proof& proof) {
            {
                const std::lock_guard lock(mutex_);
                answer_ = Answer{job.revision, proof};
            }
            Q_EMIT ready();
        };
        prove(job.sketch, job.level, options, running.get_token());
    }
}

} // namespace siphonwright
