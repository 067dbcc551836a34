#include "job/record/standing.h"

#include <fmt/format.h>

#include <cstddef>
#include <optional>
#include <unordered_map>

#include "job/record/kinds.h"
#include "words/say.h"

namespace lastegg::record {
namespace {

constexpr std::size_t k_none = static_cast<std::size_t>(-1);

struct Node {
  const Event* event = nullptr;
  std::size_t target = k_none;  ///< the event it corrects, if that is here
  std::optional<Error> fault;
  bool shares_id = false;
  bool beaten = false;
  enum class Visit { none, open, done } visit = Visit::none;
};

Error complaint(std::string message, std::string where, std::string value) {
  Error error;
  error.kind = ErrorKind::bad_input;
  error.message = std::move(message);
  error.where = std::move(where);
  error.value = std::move(value);
  return error;
}

class Judge {
 public:
  explicit Judge(const EventSet& record) {
    nodes_.reserve(record.size());
    for (const Event& event : record.events()) {
      Node node;
      node.event = &event;
      nodes_.push_back(std::move(node));
    }
    for (std::size_t i = 0; i < nodes_.size(); ++i) by_id_.emplace(nodes_[i].event->id, i);
  }

  Standing judge() {
    mark_shared_ids();
    link();
    break_circles();
    for (Node& node : nodes_) check_data(node);
    for (const Node& node : nodes_)
      if (!node.fault) beat_below(node);
    Standing standing;
    for (const Node& node : nodes_) {
      if (node.fault)
        standing.refused.push_back({node.event->id, *node.fault, node.beaten});
      else if (!node.beaten)
        standing.statements.push_back(node.event);
    }
    return standing;
  }

 private:
  void mark_shared_ids() {
    for (std::size_t i = 1; i < nodes_.size(); ++i) {
      if (nodes_[i].event->id == nodes_[i - 1].event->id)
        nodes_[i].shares_id = nodes_[i - 1].shares_id = true;
    }
    for (Node& node : nodes_) {
      if (node.shares_id)
        node.fault =
            complaint(say("another event has the same id and other bytes; neither counts until a correction "
                          "names this id"),
                      "/id", node.event->id);
    }
  }

  // Finds what each event corrects. by_id_ holds the first of those that share an id; they end every chain.
  void link() {
    for (Node& node : nodes_) {
      if (node.shares_id || !node.event->corrects) continue;
      const auto found = by_id_.find(*node.event->corrects);
      if (found == by_id_.end()) continue;
      const Event& target = *nodes_[found->second].event;
      if (!nodes_[found->second].shares_id && target.subject != node.event->subject) {
        node.fault =
            complaint(say("corrects an event about another subject"), "/corrects", *node.event->corrects);
      } else if (!nodes_[found->second].shares_id && family_of(target.kind) != family_of(node.event->kind)) {
        node.fault = complaint(say("is a {} and corrects a {}", node.event->kind, target.kind), "/corrects",
                               *node.event->corrects);
      } else {
        node.target = found->second;
      }
    }
  }

  void break_circles() {
    for (std::size_t start = 0; start < nodes_.size(); ++start) {
      std::vector<std::size_t> path;
      std::size_t at = start;
      while (at != k_none && nodes_[at].visit == Node::Visit::none) {
        nodes_[at].visit = Node::Visit::open;
        path.push_back(at);
        at = nodes_[at].target;
      }
      if (at != k_none && nodes_[at].visit == Node::Visit::open) {
        std::size_t member = at;
        do {
          Node& node = nodes_[member];
          member = node.target;
          node.fault = complaint(say("corrections form a circle"), "/corrects", *node.event->corrects);
          node.target = k_none;
        } while (member != at);
      }
      for (const std::size_t done : path) nodes_[done].visit = Node::Visit::done;
    }
  }

  static void check_data(Node& node) {
    if (node.fault) return;
    if (const KindRule* rule = rule_of(node.event->kind)) node.fault = fault_of(*rule, node.event->data);
  }

  // Whatever is beaten already has had everything below it beaten too.
  void beat_below(const Node& winner) {
    for (std::size_t at = winner.target; at != k_none && !nodes_[at].beaten; at = nodes_[at].target) {
      nodes_[at].beaten = true;
      if (!nodes_[at].shares_id) continue;
      for (std::size_t same = at + 1; same < nodes_.size() && nodes_[same].event->id == nodes_[at].event->id;
           ++same)
        nodes_[same].beaten = true;
    }
  }

  std::vector<Node> nodes_;
  std::unordered_map<std::string, std::size_t> by_id_;
};

}  // namespace

Standing standing_of(const EventSet& record) {
  return Judge(record).judge();
}

}  // namespace lastegg::record
